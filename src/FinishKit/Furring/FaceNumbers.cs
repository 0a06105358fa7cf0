using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A rectangle: s across the strips, t along them.</summary>
internal readonly struct FaceBox(double s0, double s1, double t0, double t1)
{
    internal double S0 { get; } = s0;

    internal double S1 { get; } = s1;

    internal double T0 { get; } = t0;

    internal double T1 { get; } = t1;

    internal FaceBox Turned => new(T0, T1, S0, S1);

    internal bool Overlaps(in FaceBox other) => S0 < other.S1 && other.S0 < S1 && T0 < other.T1 && other.T0 < T1;
}

/// <summary>A member of the shell as numbers, with its place in the caller's list.</summary>
internal readonly struct MemberNumbers(int index, double centre, double half, double from, double to, double setback)
{
    internal int Index { get; } = index;

    internal double Centre { get; } = centre;

    internal double Half { get; } = half;

    internal double From { get; } = from;

    internal double To { get; } = to;

    internal double Setback { get; } = setback;
}

/// <summary>Members sorted by their middles.</summary>
internal sealed class MemberSet
{
    private readonly double[] _centres;
    private readonly double _widest;

    internal MemberSet(MemberNumbers[] members)
    {
        Array.Sort(members, static (left, right) => left.Centre != right.Centre ? left.Centre.CompareTo(right.Centre) : left.Index.CompareTo(right.Index));
        All = members;
        _centres = Array.ConvertAll(members, static member => member.Centre);
        foreach (MemberNumbers member in members)
        {
            _widest = Math.Max(_widest, member.Half);
        }
    }

    internal MemberNumbers[] All { get; }

    /// <summary>The first that may reach a place.</summary>
    internal int First(double from)
    {
        int at = Array.BinarySearch(_centres, from - _widest);
        at = at < 0 ? ~at : at;
        while (at > 0 && _centres[at - 1] >= from - _widest)
        {
            at--;
        }

        return at;
    }

    /// <summary>Whether those from here on are all past a place.</summary>
    internal bool IsPast(int at, double to) => at >= _centres.Length || _centres[at] > to + _widest;
}

/// <summary>A face as numbers, turned so that strips run along t and are spaced along s.</summary>
internal sealed class FaceNumbers
{
    private const double Longest = 1e5;

    private static readonly Allowed s_extent = new(100, Longest, "mm");
    private static readonly Allowed s_bay = new(10, Longest, "mm");
    private static readonly Allowed s_place = new(-Longest, Longest, "mm");
    private static readonly Allowed s_width = new(Allowed.OneStep, 1000, "mm");
    private static readonly Allowed s_stripWidth = new(5, 500, "mm");
    private static readonly Allowed s_setback = new(0, 1000, "mm");
    private static readonly Allowed s_spacing = new(10, 10_000, "mm");
    private static readonly Allowed s_lean = new(-90, 90, "°");
    private static readonly Allowed s_limit = new(0, 90, "°");
    private static readonly Allowed s_load = new(0, 100_000, "N");

    internal bool IsTurned { get; private set; }

    /// <summary>Extent across the strips, and along them.</summary>
    internal double S { get; private set; }

    internal double T { get; private set; }

    /// <summary>The leaning edges, front and rear, each at v = 0 and at the full girth.</summary>
    internal double Front0 { get; private set; }

    internal double Front1 { get; private set; }

    internal double Rear0 { get; private set; }

    internal double Rear1 { get; private set; }

    internal double Bay { get; private set; }

    internal FaceBox[] Openings { get; private set; } = [];

    internal FaceBox[] Stops { get; private set; } = [];

    /// <summary>Breaks that end a course, rising.</summary>
    internal double[] Breaks { get; private set; } = [];

    internal double[] Joints { get; private set; } = [];

    /// <summary>Members along the strips, and across them.</summary>
    internal MemberSet Along { get; private set; } = new([]);

    internal MemberSet Across { get; private set; } = new([]);

    internal double Width { get; private set; }

    internal double JointWidth { get; private set; }

    internal bool IsDoubled { get; private set; }

    internal SectionNumbers Section { get; private set; }

    internal double FixingSpacing { get; private set; }

    internal double LeastDistance { get; private set; }

    private bool IsLeastGiven { get; set; }

    internal double Load { get; private set; }

    internal static FaceNumbers? Read(FurringFace face, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(face, new Name(path), "a face", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        FaceNumbers n = new();
        double length = Door.Millimetres(face.FaceLength, path + ".FaceLength", s_extent, problems);
        double girth = Door.Millimetres(face.Girth, path + ".Girth", s_extent, problems);
        n.Bay = Door.Millimetres(face.LargestBay, path + ".LargestBay", s_bay, problems);
        if (double.IsNaN(length + girth + n.Bay))
        {
            return null; // what lies within the face cannot be judged
        }

        n.IsTurned = Named(face.Boards is BoardDirection.AlongTheVan or BoardDirection.UpTheGirth, (int)face.Boards, path + ".Boards", "AlongTheVan or UpTheGirth", problems) && face.Boards == BoardDirection.UpTheGirth;
        (n.S, n.T) = n.IsTurned ? (girth, length) : (length, girth);
        Allowed front = new(0, length / 2, "mm"), rear = new(length / 2, length, "mm");
        n.Front0 = face.FrontAtFoot is { } f0 ? Door.Millimetres(f0, path + ".FrontAtFoot", front, problems) : 0;
        n.Front1 = face.FrontAtHead is { } f1 ? Door.Millimetres(f1, path + ".FrontAtHead", front, problems) : 0;
        n.Rear0 = face.RearAtFoot is { } r0 ? Door.Millimetres(r0, path + ".RearAtFoot", rear, problems) : length;
        n.Rear1 = face.RearAtHead is { } r1 ? Door.Millimetres(r1, path + ".RearAtHead", rear, problems) : length;
        Allowed u = new(0, length, "mm"), v = new(0, girth, "mm"), inside = new(Allowed.OneStep, girth, "mm");
        n.ReadOpenings(face, path, u, v, problems);
        n.ReadBreaks(face, path, inside, problems);
        n.ReadStops(face, path, u, inside, problems);
        MemberSet ribs = ReadMembers(face.Ribs, path + ".Ribs", girth, problems), rails = ReadMembers(face.Rails, path + ".Rails", length, problems);
        (n.Along, n.Across) = n.IsTurned ? (rails, ribs) : (ribs, rails);
        n.ReadStrips(face, path, problems);
        return (problems?.Count ?? 0) > before ? null : n;
    }

    /// <summary>The default grows with the widest strip there is.</summary>
    internal void WidenLeastDistance(double widest)
    {
        if (!IsLeastGiven)
        {
            LeastDistance = Math.Max(LeastDistance, Grid.SnapUp((Width + widest) / 2));
        }
    }

    private static bool Named(bool holds, int value, string path, string words, List<InputProblem>? problems)
    {
        if (!holds)
        {
            Door.Report(new InputProblem(path, Print.Number(value), words, isRange: true), problems);
        }

        return holds;
    }

    private static int Count<T>(IReadOnlyList<T> list, string path, int most, string what, List<InputProblem>? problems)
    {
        string words = "at most " + Print.Number(most) + " " + what;
        if (Door.IsMissing(list, new Name(path), words, problems))
        {
            return 0;
        }

        if (list.Count > most)
        {
            Door.Report(new InputProblem(path, Print.Number(list.Count) + " " + what, words, isRange: true), problems);
            return 0;
        }

        return list.Count;
    }

    private static MemberSet ReadMembers(IReadOnlyList<ShellMember> list, string path, double extent, List<InputProblem>? problems)
    {
        int count = Count(list, path, FurringFace.MostMembers, "members", problems);
        MemberNumbers[] members = new MemberNumbers[count];
        for (int i = 0; i < count; i++)
        {
            Name at = new(path, i);
            ShellMember member = list[i];
            if (Door.IsMissing(member, at, "a member", problems))
            {
                continue;
            }

            double centre = Door.Millimetres(member.Centre, at.Then(".Centre"), s_place, problems);
            double width = Door.Millimetres(member.Width, at.Then(".Width"), s_width, problems);
            double from = member.From is { } begin ? Door.Millimetres(begin, at.Then(".From"), s_place, problems) : 0;
            double to = member.To is { } end ? Door.Millimetres(end, at.Then(".To"), s_place, problems) : Math.Max(extent, double.IsNaN(from) ? 0 : from);
            if (from > to)
            {
                Door.Report(new InputProblem(at.Then(".To").ToString(), Print.Number(to) + " mm", "no less than where it begins, " + Print.Number(from) + " mm", isRange: true), problems);
            }

            members[i] = new MemberNumbers(i, centre, width / 2, from, to, Door.Millimetres(member.Setback, at.Then(".Setback"), s_setback, problems));
        }

        return new MemberSet(members);
    }

    private void ReadOpenings(FurringFace face, string path, Allowed u, Allowed v, List<InputProblem>? problems)
    {
        string name = path + ".Openings";
        int count = Count(face.Openings, name, FurringFace.MostParts, "openings", problems);
        List<FaceBox> boxes = new(count);
        for (int i = 0; i < count; i++)
        {
            Name at = new(name, i);
            if (FaceOpening.Read(face.Openings[i], at, u, v, problems) is not { } read)
            {
                continue;
            }

            FaceBox box = new(read.U0, read.U1, read.V0, read.V1);
            if (boxes.Exists(other => other.Overlaps(box)))
            {
                Door.Report(new InputProblem(at.ToString(), face.Openings[i].ToString(), "over no other opening", isRange: true), problems);
            }

            boxes.Add(box);
        }

        Openings = boxes.ConvertAll(box => IsTurned ? box.Turned : box).ToArray();
        Array.Sort(Openings, static (one, other) => one.S0 != other.S0 ? one.S0.CompareTo(other.S0) : one.T0.CompareTo(other.T0));
    }

    private void ReadBreaks(FurringFace face, string path, Allowed v, List<InputProblem>? problems)
    {
        double limit = face.BreakLimit is { } given ? Degrees(given, path + ".BreakLimit", s_limit, problems) : BreakRule.Default;
        bool every = Named(face.BreakStrips is >= BreakStrips.BothSides and <= BreakStrips.None, (int)face.BreakStrips, path + ".BreakStrips", "one of BothSides, EveryBreak, OneSide, None", problems) && face.BreakStrips == BreakStrips.EveryBreak;
        string name = path + ".Breaks";
        int count = Count(face.Breaks, name, FurringFace.MostParts, "breaks", problems);
        List<double> ending = [];
        for (int i = 0; i < count; i++)
        {
            Name at = new(name, i);
            FaceBreak line = face.Breaks[i];
            if (Door.IsMissing(line, at, "a break", problems))
            {
                continue;
            }

            double place = Door.Millimetres(line.V, at.Then(".V"), v, problems), change = Degrees(line.LeanChange, at.Then(".LeanChange").ToString(), s_lean, problems);
            if (every || BreakRule.IsExceeded(change, limit))
            {
                if (ending.Contains(place))
                {
                    Door.Report(new InputProblem(at.Then(".V").ToString(), Print.Number(place) + " mm", "another height than the breaks before it", isRange: true), problems);
                }

                ending.Add(place);
            }
        }

        ending.Sort();
        Breaks = [.. ending];
    }

    private static double Degrees(Angle angle, string path, Allowed allowed, List<InputProblem>? problems) => Door.Number(Door.Degrees(angle), path, allowed, problems);

    private void ReadStops(FurringFace face, string path, Allowed u, Allowed v, List<InputProblem>? problems)
    {
        string name = path + ".Stops";
        int count = Count(face.Stops, name, FurringFace.MostParts, "stops", problems);
        List<FaceBox> boxes = new(count);
        for (int i = 0; i < count; i++)
        {
            Name at = new(name, i);
            FurnitureStop stop = face.Stops[i];
            if (Door.IsMissing(stop, at, "a stop", problems))
            {
                continue;
            }

            double u0 = Door.Millimetres(stop.FromU, at.Then(".FromU"), u, problems), u1 = Door.Millimetres(stop.ToU, at.Then(".ToU"), u, problems), line = Door.Millimetres(stop.V, at.Then(".V"), v, problems);
            if (!double.IsNaN(u0 + u1 + line) && Door.Rises(u0, u1, at.Then(".ToU"), problems))
            {
                FaceBox box = new(u0, u1, 0, line);
                boxes.Add(IsTurned ? box.Turned : box);
            }
        }

        Stops = [.. boxes];
    }

    private void ReadStrips(FurringFace face, string path, List<InputProblem>? problems)
    {
        BeamSection section = face.StripSection ?? FurringLayout.DefaultSection;
        Section = section.Read(new Name(path + ".StripSection"), problems);
        Width = Door.Millimetres(section.Width, path + ".StripSection.Width", s_stripWidth, double.IsNaN(Section.Width) ? [] : problems);
        Width = double.IsNaN(Width) ? FurringDefaults.Width : Width;
        JointWidth = face.JointWidth is { } joint ? Door.Millimetres(joint, path + ".JointWidth", new Allowed(Width, 1000, "mm"), problems) : Math.Max(Width, FurringDefaults.JointWidth);
        bool wide = Named(face.Joint is JointStrip.Wide or JointStrip.Doubled, (int)face.Joint, path + ".Joint", "Wide or Doubled", problems) && face.Joint == JointStrip.Wide;
        IsDoubled = !wide;
        string name = path + ".ButtJoints";
        int count = Count(face.ButtJoints, name, FurringFace.MostJoints, "joints", problems);
        Joints = new double[count];
        Allowed within = new(0, S, "mm");
        for (int i = 0; i < count; i++)
        {
            Joints[i] = Door.Millimetres(face.ButtJoints[i], new Name(name, i), within, problems);
        }

        FixingSpacing = face.FixingSpacing is { } spacing ? Door.Millimetres(spacing, path + ".FixingSpacing", s_spacing, problems) : FurringDefaults.FixingSpacing;
        IsLeastGiven = face.LeastDistance is not null;
        LeastDistance = face.LeastDistance is { } least ? Door.Millimetres(least, path + ".LeastDistance", new Allowed(Width, Longest, "mm"), problems)
            : count > 0 && wide ? (Width + JointWidth) / 2 : Width;
        Named(face.Preference is StripPreference.OnRibs or StripPreference.FewestStrips, (int)face.Preference, path + ".Preference", "one of OnRibs, FewestStrips", problems);
        bool ceiling = Named(face.Surface is Surface.Wall or Surface.Ceiling, (int)face.Surface, path + ".Surface", "Wall or Ceiling", problems) && face.Surface == Surface.Ceiling;
        Load = face.PointLoad is { } load ? Door.Newtons(load, path + ".PointLoad", s_load, problems) : ceiling ? BeamDefaults.CeilingLoad : BeamDefaults.WallLoad;
    }
}
