using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What the answers of <see cref="PanelBend"/> and <see cref="HoldDown"/> have to say, and their words.</summary>
internal static class PanelFindings
{
    private const string TooTight = "panels-bend-too-tight";

    internal static string Surface(double wall) => double.IsNaN(wall) ? "a flat surface"
        : wall < 0 ? $"a surface of {Print.Mm(-wall)} radius bulging into the room"
        : $"a surface of {Print.Mm(wall)} radius hollow to the room";

    internal static string SheetWords(BentSheet sheet) =>
        (string.IsNullOrEmpty(sheet.Name) ? "a sheet of " + Print.Mm(Door.Millimetres(sheet.Thickness)) : sheet.Name) + BendLimit.GrainWords(sheet.Grain);

    /// <summary>Which basis governs.</summary>
    internal static string Words(in BendLimit limit) => limit.Basis == BendBasis.PublishedRadius
        ? $"published, {limit.PublishedSource.Id}"
        : $"elastic limit times {Print.Number(limit.Factor)}";

    internal static void AddFigure(List<Figure> figures, string name, double value, string unit)
    {
        if (!double.IsNaN(value))
        {
            figures.Add(new Figure(name, unit == "mm" ? Grid.Snap(value) : value, unit));
        }
    }

    /// <summary>The worst severity, as the number of its enumeration: what is left of the findings where only figures are kept.</summary>
    internal static Figure Worst(IReadOnlyList<Finding> findings) => new("worst-severity", findings.Count == 0 ? 0 : (int)findings[0].Severity, string.Empty);

    internal static void AddTooTight(BentSheet sheet, in BendQuestion question, in BendNumbers numbers, BendNumbers? turned, bool? turnedFollows, List<Finding> findings)
    {
        if (!numbers.IsTooTight)
        {
            return;
        }

        string other = turned is { } grain
            ? turnedFollows == true ? $" With its face grain turned it follows: then {Print.MmUp(grain.Minimum)} is allowed."
            : grain.Passes ? $" With its face grain turned {Print.MmUp(grain.Minimum)} is allowed around the curve, but it does not follow then either."
            : $" With its face grain turned {Print.MmUp(grain.Minimum)} is allowed: it does not follow either way."
            : string.Empty;
        findings.Add(new Finding(
            TooTight,
            Severity.Problem,
            $"{Capital(SheetWords(sheet))}, is bent to {Print.Mm(numbers.Peak)} at its tightest ({Print.Round(question.Ratio, 3)} times the curvature of {Surface(question.Wall)}); allowed is {Print.MmUp(numbers.Minimum)} ({Words(question.Limit)}).{other}",
            [new("peak-radius", numbers.Peak, "mm"), new("minimum-radius", numbers.Minimum, "mm"), new("curvature-ratio", question.Ratio, string.Empty), new("margin", numbers.Margin, string.Empty)],
            question.Limit.Basis == BendBasis.PublishedRadius ? question.Limit.PublishedSource : Sources.BendElastic));
    }

    /// <summary>What belongs to a minimum radius whatever it is asked for.</summary>
    internal static void AddLimit(in BendLimit limit, List<Finding> findings)
    {
        if (limit.FactorIsLow)
        {
            findings.Add(new Finding(
                "panels-bend-factor-low",
                Severity.Caution,
                $"A factor of {Print.Number(limit.Factor)} on the elastic radius is less than the usual 1.5 to 3: at 1 one sheet in twenty breaks while it is bent, and the rest stay near it for good.",
                [new("bend-factor", limit.Factor, string.Empty)],
                Sources.BendFactor));
        }

        if (limit.IsAllowable)
        {
            findings.Add(new Finding(
                "panels-allowable-strength",
                Severity.Note,
                "The bending strength is an allowable design value, with a factor for loads in it: the elastic radius is further on the safe side than one by a characteristic strength. A published radius of the same wood may lie well below it.",
                [new("elastic-radius", limit.Elastic, "mm")],
                Sources.BendFactorOfAllowable));
        }

        if (!double.IsNaN(limit.Published))
        {
            findings.Add(new Finding(
                "panels-published-condition",
                Severity.Note,
                $"The published radius of {Print.Mm(limit.Published)} holds for the wood, the direction of grain and the moisture of its own table only; {(limit.Basis == BendBasis.PublishedRadius ? "it governs over" : "it is less than")} the elastic {Print.MmUp(limit.Elastic)}.",
                [new("published-radius", limit.Published, "mm"), new("elastic-radius", limit.Elastic, "mm")],
                limit.PublishedSource));
        }

        findings.Add(new Finding(
            "panels-bend-dry",
            Severity.Note,
            "The sheet is taken as bent dry and at room temperature; wetting, steam and heat are not counted. Knots, voids, laps and scarfed joints at the tightest place break sooner: bend a trial piece.",
            [],
            Sources.BendElastic));
    }

    /// <summary>The same of several sheets: what has been said of one is not said again of the next.</summary>
    internal static void AddLimits(IReadOnlyList<BendLimit> limits, List<Finding> findings)
    {
        List<Finding> all = [];
        foreach (BendLimit limit in limits)
        {
            AddLimit(limit, all);
        }

        foreach (Finding finding in all)
        {
            if (!findings.Exists(said => said.Code == finding.Code && said.Message == finding.Message))
            {
                findings.Add(finding);
            }
        }
    }

    /// <summary>The factors that sheets have by default, each once.</summary>
    internal static void AddFactors(IReadOnlyList<BendLimit> limits, List<DefaultUsed> defaults)
    {
        foreach (BendLimit limit in limits)
        {
            if (limit.FactorIsDefault && !defaults.Exists(used => used.Source == limit.FactorSource))
            {
                defaults.Add(limit.DefaultFactorUsed);
            }
        }
    }

    internal static void AddWorking(List<Finding> findings) => findings.Add(new Finding(
        "panels-cutting-dust",
        Severity.Note,
        "Cutting and drilling plywood makes fine dust of wood and glue: extract it at the tool and wear a mask.",
        []));

    /// <summary>The bend along the axis of the curve: too tight, or judged by the figures of the wrong direction for want of others.</summary>
    internal static void AddBow(in PanelBendQuestions questions, BendNumbers? numbers, List<Finding> findings)
    {
        if (questions.Along is not { } along || numbers is not { } bent)
        {
            return;
        }

        if (bent.IsTooTight)
        {
            findings.Add(new Finding(
                "panels-bow-too-tight",
                Severity.Problem,
                $"Along the axis of the curve the sheet is bent to {Print.Mm(bent.Peak)} at its tightest ({Print.Round(along.Ratio, 3)} times the curvature of {Surface(along.Wall)}); that way {Print.MmUp(bent.Minimum)} is allowed ({Words(along.Limit)}).",
                [new("peak-radius", bent.Peak, "mm"), new("minimum-radius", bent.Minimum, "mm"), new("curvature-ratio", along.Ratio, string.Empty), new("margin", bent.Margin, string.Empty)],
                Sources.BendElastic));
        }

        if (!questions.AlongIsKnown)
        {
            findings.Add(new Finding(
                "panels-bow-figures",
                Severity.Caution,
                $"Stiffness and strength along the axis of the curve are not known: those around it stand for them, and so for the {Print.MmUp(bent.Minimum)} allowed that way. The grain may make them very different; take a sheet that carries both.",
                [new("bow-minimum-radius", bent.Minimum, "mm")],
                Sources.BendElastic));
        }
    }

    internal static void AddReach(in ArcReach reach, List<Finding> findings)
    {
        if (reach.IsOutside)
        {
            findings.Add(new Finding("panels-bay-too-long", Severity.Problem, reach.Message, reach.Values, Sources.HoldDownRows));
        }
        else if (reach.IsNotShallow)
        {
            findings.Add(new Finding("panels-bay-not-shallow", Severity.Caution, reach.Message, reach.Values, Sources.HoldDownRows));
        }
    }

    internal static void AddDouble(in DoubleBow bow, List<Finding> findings)
    {
        if (bow.Passes)
        {
            return;
        }

        findings.Add(new Finding(
            "panels-double-curvature",
            Severity.Problem,
            $"The surface curves both ways: over the shorter side of {Print.Mm(bow.Side)} it rises {Print.Mm(bow.RiseAround)} and {Print.Mm(bow.RiseAlong)}, which a flat sheet follows only by stretching ({Print.Round(bow.Stress, 2)} MPa at its edges) and buckling. That is {Print.Round(bow.Share, 2)} times what is taken. Use narrower panels, relief cuts or several strips.",
            [new("double-curvature-share", bow.Share, string.Empty), new("rise-around", bow.RiseAround, "mm"), new("rise-along", bow.RiseAlong, "mm"), new("membrane-stress", bow.Stress, "MPa")],
            Sources.DoubleCurvature));
    }

    /// <summary>What the rows leave open: too few, or unknown.</summary>
    internal static void AddRows(in BendQuestion question, in BendNumbers numbers, ArcRows? rows, SheetBacking backing, List<Finding> findings)
    {
        bool liesOnBulge = question.Bulges && backing == SheetBacking.AllOver;
        if (!numbers.IsHeld)
        {
            findings.Add(new Finding(
                "panels-not-held",
                Severity.Problem,
                liesOnBulge ? $"Nothing pulls the edges: the sheet stays straight on the crown of {Surface(question.Wall)}."
                    : $"Two rows leave the sheet straight between them: it is not held to {Surface(question.Wall)}. Three rows are the least.",
                [new("rows", rows?.RowCount ?? 0, string.Empty)],
                liesOnBulge ? Sources.EdgeLift : Sources.HoldDownRows));
        }
        else if (rows is null && !question.IsFlat && !liesOnBulge)
        {
            findings.Add(new Finding(
                "panels-rows-unknown",
                Severity.Note,
                $"No rows of fixings were given: the sheet is taken to bend {Print.Number(ArcRows.WorstRatio)} times as much as the arc, the worst that any rows do. Give the rows for less.",
                [new("curvature-ratio", ArcRows.WorstRatio, string.Empty)],
                Sources.WorstRows));
        }
    }

    internal static IReadOnlyList<Finding> OfHoldDown(HoldDownResult result, in HeldSheet held, in BendQuestion question, in BendNumbers numbers, in EdgeNumbers edge, double overhang)
    {
        List<Finding> findings = [];
        BendNumbers? turned = PanelBend.Turned(result.Panel.Sheet, question)?.Solve(default(Silent));
        AddTooTight(result.Panel.Sheet, question, numbers, turned, turned?.Passes == true && !held.Reach(edge).IsOutside, findings);
        AddRows(question, numbers, held.Rows, held.Backing, findings);
        AddReach(held.Reach(edge), findings);
        AddFixings(result, held, findings);
        AddStandOff(result, overhang, findings);
        if (held.OnBulge)
        {
            AddEdge(edge, held, findings);
        }

        AddLimit(held.Limit, findings);
        AddWorking(findings);
        return Finding.GravestFirst(findings);
    }

    private static void AddFixings(HoldDownResult result, in HeldSheet held, List<Finding> findings)
    {
        double pull = 0;
        int bearing = 0;
        for (int i = 0; i < result.Rows.Count; i++)
        {
            pull = Math.Max(pull, result.Rows[i].Newtons);
            bearing += result.Rows[i].OnlyBears && i > 0 && i < result.Rows.Count - 1 ? 1 : 0;
        }

        if (pull == 0)
        {
            return;
        }

        if (bearing > 0 && !held.OnBulge)
        {
            findings.Add(new Finding(
                "panels-row-only-bears",
                Severity.Note,
                $"{Print.Number(bearing)} of the inner rows only {(bearing == 1 ? "bears" : "bear")}: the sheet presses on {(bearing == 1 ? "it" : "them")}, and fixings there hold nothing of the curve.",
                [new("rows-bearing", bearing, string.Empty)],
                Sources.HoldDownRows));
        }

        if (double.IsNaN(held.Capacity))
        {
            findings.Add(new Finding(
                "panels-fixing-capacity-unknown",
                Severity.Caution,
                $"A row pulls up to {Print.Round(pull, 2)} N for good, and what one fixing holds was not given: too few, too short, a thin sheet under small heads or thin stock behind lets them pull out or through. Thin metal needs fixings made for it.",
                [new("greatest-pull", pull, "N")],
                Sources.HoldDownRows));
        }
        else if (held.Fixings > 0 && Grid.CeilingOfRatio(pull, held.Capacity) > held.Fixings)
        {
            findings.Add(new Finding(
                "panels-fixings-pull-out",
                Severity.Problem,
                $"{Print.Number(held.Fixings)} fixings of {Print.Round(held.Capacity, 2)} N in a row hold {Print.Round(held.Fixings * held.Capacity, 2)} N; the row pulls {Print.Round(pull, 2)} N. It takes {Print.Number(Grid.CeilingOfRatio(pull, held.Capacity))} at the least, the pull shared evenly, or a thinner sheet.",
                [new("fixings", held.Fixings, string.Empty), new("fixings-needed", Grid.CeilingOfRatio(pull, held.Capacity), string.Empty), new("capacity", held.Capacity, "N"), new("greatest-pull", pull, "N")],
                Sources.HoldDownRows));
        }
        else if (held.Fixings == 0 && result.FixingsNeededPerRow is null)
        {
            findings.Add(new Finding(
                "panels-fixings-pull-out",
                Severity.Problem,
                $"No practical number of fixings of {Print.Small(held.Capacity)} N holds the {Print.Round(pull, 2)} N that a row pulls.",
                [new("capacity", held.Capacity, "N"), new("greatest-pull", pull, "N")],
                Sources.HoldDownRows));
        }
        else
        {
            double needed = Grid.CeilingOfRatio(pull, held.Capacity);
            findings.Add(new Finding(
                "panels-fixings-shared",
                Severity.Caution,
                $"A row that pulls {Print.Round(pull, 2)} N takes {Print.Number(needed)} fixings of {Print.Round(held.Capacity, 2)} N at the least: that shares the pull evenly. Laid out along the row, the inner ones have more of it than those at its ends, and it may take more of them: PanelFixings places them.",
                [new("fixings-needed", needed, string.Empty), new("capacity", held.Capacity, "N"), new("greatest-pull", pull, "N")],
                Sources.HoldDownRows));
        }

        findings.Add(new Finding(
            "panels-springs-back",
            Severity.Caution,
            $"The sheet stays bent by force: released, it springs flat. Fit from the middle outward with the sheet pressed home, and hold it before the last fixings of a row, up to {Print.Round(pull, 2)} N, come out.",
            [new("greatest-pull", pull, "N")],
            Sources.HoldDownRows));
        findings.Add(new Finding(
            "panels-look-behind",
            Severity.Note,
            "Nothing here knows what is behind the rows: never drive a fixing into a cavity that has not been measured and looked into.",
            []));
    }

    private static void AddStandOff(HoldDownResult result, double overhang, List<Finding> findings)
    {
        double room = result.LiftedLength is null ? Door.Millimetres(result.StandOff) : 0, past = Door.Millimetres(result.PastArc);
        if (room > 0)
        {
            findings.Add(new Finding(
                "panels-stands-off",
                Severity.Note,
                $"Between rows the sheet stands off the arc into the room by up to {Print.Mm(room)}, {Print.Mm(Door.Millimetres(result.StandOffAt!.Value))} from its edge.",
                [new("stand-off", room, "mm"), new("stand-off-at", Door.Millimetres(result.StandOffAt.Value), "mm")],
                Sources.HoldDownRows));
        }

        if (past > 0)
        {
            findings.Add(new Finding(
                "panels-past-arc",
                Severity.Caution,
                $"Between rows the sheet passes the arc toward the shell by up to {Print.Mm(past)}, {Print.Mm(Door.Millimetres(result.PastArcAt!.Value))} from its edge: nothing may stand that near behind it, and where something does, it bears there and the figures change.",
                [new("past-arc", past, "mm"), new("past-arc-at", Door.Millimetres(result.PastArcAt.Value), "mm")],
                Sources.HoldDownRows));
        }

        if (overhang > 0)
        {
            findings.Add(new Finding(
                "panels-overhang",
                Severity.Caution,
                $"Beyond an outer row the sheet goes on straight, and its edge leaves the arc by {Print.Mm(overhang)}, outward where the wall is hollow, into the room where it bulges. Put the outer rows at the edges.",
                [new("edge-off-arc", overhang, "mm")],
                Sources.HoldDownRows));
        }
    }

    private static void AddEdge(in EdgeNumbers edge, in HeldSheet held, List<Finding> findings) => findings.Add(new Finding(
        "panels-edge-lifts",
        Severity.Note,
        $"On a bulging surface the edges pull: with {Print.Round(edge.Pull * held.Width, 2)} N on each edge the last {Print.Mm(edge.Length)} lift, the edge by {Print.Mm(edge.Lift)}. No finite pull closes the last gap; cover the edge or bend it beforehand.",
        [new("edge-pull", edge.Pull * held.Width, "N"), new("edge-lift", edge.Lift, "mm"), new("lifted-length", edge.Length, "mm")],
        Sources.EdgeLift));

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words.Substring(1);
}
