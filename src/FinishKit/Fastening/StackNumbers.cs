using System.Collections.Generic;
using System.Globalization;

namespace FinishKit;

/// <summary>A job as plain checked numbers in mm, rad and mm²: what the formula body reads.</summary>
internal sealed record StackNumbers
{
    private static readonly Allowed s_compressed = new(0, 1000, "mm");
    internal static readonly Allowed Distances = new(0, 1000, "mm");
    internal static readonly Allowed Clearances = new(0, 100, "mm");
    private static readonly Allowed s_bite = new(0, 500, "mm");
    private static readonly Allowed s_count = new(1, 1e6, string.Empty);
    private static readonly Allowed s_chance = new(0, 0.01, string.Empty);
    private static readonly Allowed s_hits = new(0, 1000, string.Empty);

    internal required string[] Names { get; init; }

    /// <summary>For clearance: compressible layers squeezed.</summary>
    internal required TolerancedLength.Span[] Through { get; init; }

    /// <summary>For bite: compressible layers free.</summary>
    internal required TolerancedLength.Span[] Free { get; init; }

    internal required bool[] Holds { get; init; }

    /// <summary>What each layer's thickness rests on.</summary>
    internal required Source[] LayerSources { get; init; }

    internal required Source SetDepthSource { get; init; }

    /// <summary>What the fastener's length and its tolerance rest on.</summary>
    internal required Source FastenerSource { get; init; }

    internal required BehindKind Behind { get; init; }

    internal required string BehindWords { get; init; }

    internal required TolerancedLength.Span Gap { get; init; }

    internal required TolerancedLength.Span SetDepth { get; init; }

    internal required double Angle { get; init; }

    internal required double Shank { get; init; }

    internal required double Required { get; init; }

    internal required double LeastBite { get; init; }

    internal required double TargetBite { get; init; }

    internal required int Count { get; init; }

    internal required double MarginalChance { get; init; }

    internal required double HitsLimit { get; init; }

    /// <summary>Index of the last layer that holds: the one a remedy makes thicker; -1 if none.</summary>
    internal int Furring => System.Array.LastIndexOf(Holds, true);

    /// <summary>Whether the head, set deepest, may go through the first layer at its thinnest.</summary>
    internal bool HeadGoesThrough => SetDepth.Greatest >= Through[0].Least;

    /// <summary>The tolerances that the worst case takes, for a sentence.</summary>
    internal string Tolerances(TolerancedLength.Span fastener)
    {
        List<string> terms = [];
        for (int i = 0; i < Through.Length; i++)
        {
            Add(Names[i], Through[i]);
        }

        Add("gap", Gap);
        Add("set depth", SetDepth);
        Add("fastener", fastener);
        return terms.Count == 0 ? "no tolerance entered" : "tolerances: " + string.Join(", ", terms);

        void Add(string name, TolerancedLength.Span span)
        {
            if (span.Lower != 0 || span.Upper != 0)
            {
                terms.Add(name + " " + TolerancedLength.DeviationWords(span.Lower, span.Upper));
            }
        }
    }

    /// <summary>The least depth of what is behind, every tolerance against you.</summary>
    internal double LeastDepth
    {
        get
        {
            double depth = Gap.Least;
            foreach (TolerancedLength.Span layer in Through)
            {
                depth += layer.Least;
            }

            return Grid.Snap(depth);
        }
    }

    internal StackNumbers WithFurring(TolerancedLength.Span thickness)
    {
        TolerancedLength.Span[] through = [.. Through], free = [.. Free];
        through[Furring] = thickness;
        free[Furring] = thickness;
        return this with { Through = through, Free = free };
    }

    internal StackNumbers WithAngle(double angle) => this with { Angle = angle };

    /// <summary>Whether a sheet's actual thickness differs from its label.</summary>
    internal bool HasLabelOffSize(IReadOnlyList<Layer> layers)
    {
        for (int i = 0; i < layers.Count; i++)
        {
            if (layers[i].Sheet is { } sheet && Door.Millimetres(sheet.Nominal) != Free[i].Nominal)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Every sheet at exactly its label: what a person who trusts the label would compute.</summary>
    internal StackNumbers WithLabels(IReadOnlyList<Layer> layers)
    {
        TolerancedLength.Span[] through = [.. Through], free = [.. Free];
        for (int i = 0; i < layers.Count; i++)
        {
            if (layers[i].Sheet is { } sheet)
            {
                through[i] = free[i] = new TolerancedLength.Span(Door.Millimetres(sheet.Nominal), 0, 0, DeviationScope.Batch);
            }
        }

        return this with { Through = through, Free = free };
    }

    /// <summary>The door of a job: everything checked once; null only where problems are collected and there are some.</summary>
    internal static StackNumbers? Read(FastenerJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return null;
        }

        string at = path.Length == 0 ? string.Empty : path + ".";
        int before = problems?.Count ?? 0;
        (TolerancedLength.Span[] through, TolerancedLength.Span[] free, bool[] holds, string[] names) = ReadLayers(job.Layers, at + (path.Length == 0 ? "layers" : "Layers"), problems);

        Behind? behind = job.Behind;
        TolerancedLength.Span gap = default;
        string behindPath = at + (path.Length == 0 ? "behind" : "Behind");
        if (!Door.IsMissing(behind, new Name(behindPath), "what is behind the last layer", problems))
        {
            gap = ReadNotBelowZero(behind!.Distance, new Name(behindPath + ".Distance"), Distances, problems);
            if (behind.Kind is < BehindKind.Wire or > BehindKind.RibMetal)
            {
                Door.Report(new InputProblem(behindPath + ".Kind", ((int)behind.Kind).ToString(CultureInfo.InvariantCulture), "a named kind", isRange: true), problems);
            }
        }

        double shank = 1;
        if (!Door.IsMissing(job.Series, new Name(at + (path.Length == 0 ? "series" : "Series")), "a series of fasteners", problems))
        {
            shank = Door.Millimetres(job.Series.Shank);
        }

        TolerancedLength.Span set = ReadNotBelowZero(job.SetDepth ?? FastenerDefaults.SetDepth, new Name(at + nameof(job.SetDepth)), FastenerLength.SetDepths, problems);
        double angle = Door.Radians(job.DriveAngle, at + nameof(job.DriveAngle), FastenerLength.DriveAngles, problems);
        double required = job.RequiredClearance is { } clearance ? Door.Millimetres(clearance, at + nameof(job.RequiredClearance), Clearances, problems) : FastenerDefaults.Clearance(behind?.Kind ?? BehindKind.RibMetal);
        double least = job.LeastBite is { } leastBite ? Door.Millimetres(leastBite, at + nameof(job.LeastBite), s_bite, problems) : Grid.Snap(FastenerDefaults.LeastBiteDiameters * shank);
        double target = job.TargetBite is { } targetBite ? Door.Millimetres(targetBite, at + nameof(job.TargetBite), s_bite, problems) : Grid.Snap(FastenerDefaults.TargetBiteDiameters * shank);
        Door.Number(job.Count, at + nameof(job.Count), s_count, problems);
        double chance = Door.Number(job.MarginalChance ?? FastenerDefaults.MarginalChance, at + nameof(job.MarginalChance), s_chance, problems);
        double hits = Door.Number(job.HitsLimit ?? FastenerDefaults.HitsLimit, at + nameof(job.HitsLimit), s_hits, problems);
        ReadList(job.Sheets, at + nameof(job.Sheets), problems);
        ReadList(job.OtherSeries, at + nameof(job.OtherSeries), problems);
        if (job.Preference is not (FastenerPreference.ShortestThatHolds or FastenerPreference.LongestSafe))
        {
            Door.Report(new InputProblem(at + nameof(job.Preference), ((int)job.Preference).ToString(CultureInfo.InvariantCulture), "a named preference", isRange: true), problems);
        }

        if ((problems?.Count ?? 0) > before)
        {
            return null;
        }

        return new StackNumbers
        {
            Names = names,
            Through = through,
            Free = free,
            Holds = holds,
            LayerSources = SourcesOf(job.Layers),
            SetDepthSource = job.SetDepth is null ? FastenerDefaults.SetDepthSource : Sources.Given,
            FastenerSource = job.Series.ToleranceSource,
            Behind = behind!.Kind,
            BehindWords = behind.Words,
            Gap = gap,
            SetDepth = set,
            Angle = angle,
            Shank = shank,
            Required = required,
            LeastBite = least,
            TargetBite = target,
            Count = job.Count,
            MarginalChance = chance,
            HitsLimit = hits,
        };
    }

    internal static (TolerancedLength.Span[] Through, TolerancedLength.Span[] Free, bool[] Holds, string[] Names) ReadLayers(IReadOnlyList<Layer> layers, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(layers, new Name(path), "1 to 20 layers", problems))
        {
            return ([], [], [], []);
        }

        if (layers.Count is < 1 or > FastenerLength.MostLayers)
        {
            Door.Report(new InputProblem(path, layers.Count + " layers", "1 to 20 layers", isRange: true), problems);
            return ([], [], [], []);
        }

        var through = new TolerancedLength.Span[layers.Count];
        var free = new TolerancedLength.Span[layers.Count];
        bool[] holds = new bool[layers.Count];
        string[] names = new string[layers.Count];
        for (int i = 0; i < layers.Count; i++)
        {
            Layer layer = layers[i];
            if (Door.IsMissing(layer, new Name(path, i), "a layer", problems))
            {
                continue;
            }

            names[i] = layer.Name ?? "layer";
            free[i] = ReadNotBelowZero(layer.Thickness, new Name(path, i, ".Thickness"), FastenerLength.Thicknesses, problems);
            through[i] = free[i];
            if (layer.Compressed is { } compressed)
            {
                through[i] = ReadNotBelowZero(compressed, new Name(path, i, ".Compressed"), s_compressed, problems);
                if (through[i].Nominal > free[i].Nominal || through[i].Least > free[i].Least)
                {
                    Door.Report(new InputProblem(new Name(path, i, ".Compressed").ToString(), Print.Mm(through[i].Nominal), $"at most the free thickness, {Print.Mm(free[i].Nominal)}, and at its least at most {Print.Mm(free[i].Least)}", isRange: true), problems);
                }
            }

            holds[i] = layer.Holds ?? (i == LastSolid(layers));
            if (layer.Compressed is not null && layer.Holds == true)
            {
                Door.Report(new InputProblem(new Name(path, i, ".Holds").ToString(), "true", "false or null for a layer that gives", isRange: false), problems);
            }

            if (layer.IsVoid && layer.Holds == true)
            {
                Door.Report(new InputProblem(new Name(path, i, ".Holds").ToString(), "true", "false or null for a void", isRange: false), problems);
            }

            if (layer.IsVoid && i == 0)
            {
                Door.Report(new InputProblem(new Name(path, i, ".IsVoid").ToString(), "true", "false for the first layer: the head seats on it", isRange: false), problems);
            }
        }

        return (through, free, holds, names);
    }

    /// <summary>The layer that holds where nothing is said: the last that is neither a void nor gives. Tape between furring and rib does not hold.</summary>
    private static int LastSolid(IReadOnlyList<Layer> layers)
    {
        for (int i = layers.Count - 1; i >= 0; i--)
        {
            if (layers[i] is { IsVoid: false, Compressed: null })
            {
                return i;
            }
        }

        return -1;
    }

    internal static Source[] SourcesOf(IReadOnlyList<Layer> layers)
    {
        var sources = new Source[layers.Count];
        for (int i = 0; i < sources.Length; i++)
        {
            sources[i] = layers[i].Sheet?.Source ?? Sources.Given;
        }

        return sources;
    }

    internal static TolerancedLength.Span ReadNotBelowZero(TolerancedLength length, Name name, Allowed allowed, List<InputProblem>? problems)
    {
        TolerancedLength.Span span = length.Read(name, allowed, problems);
        if (span.Nominal + span.Lower < 0)
        {
            Door.Report(new InputProblem(name.Then(".Lower").ToString(), Print.Number(span.Lower) + " mm", $"{Print.Number(-span.Nominal)} mm or more: the least size may not be below 0", isRange: true), problems);
        }

        return span;
    }

    private static void ReadList<T>(IReadOnlyList<T>? list, string path, List<InputProblem>? problems)
    {
        if (list is null)
        {
            return;
        }

        if (list.Count > FastenerLength.MostListed)
        {
            Door.Report(new InputProblem(path, list.Count + " entries", "at most 200 entries", isRange: true), problems);
            return;
        }

        for (int i = 0; i < list.Count; i++)
        {
            Door.IsMissing(list[i], new Name(path, i), "an entry", problems);
        }
    }
}

/// <summary>What the formula body computes for one length; lengths on the 1 nm grid.</summary>
internal readonly struct TipNumbers(double tipDepth, double clearance, double worstClearance, double mean, double batchVariance, double ownVariance, double touchChance, double bite, double worstBite)
{
    internal double TipDepth { get; } = Grid.Snap(tipDepth);

    internal double Clearance { get; } = Grid.Snap(clearance);

    internal double WorstClearance { get; } = Grid.Snap(worstClearance);

    internal double Mean { get; } = mean;

    internal double BatchVariance { get; } = batchVariance;

    internal double OwnVariance { get; } = ownVariance;

    internal double RootSumSquareClearance => Grid.Snap(Mean - (3 * System.Math.Sqrt(BatchVariance + OwnVariance)));

    internal double TouchChance { get; } = touchChance;

    internal double Bite { get; } = Grid.Snap(bite);

    internal double WorstBite { get; } = Grid.Snap(worstBite);
}
