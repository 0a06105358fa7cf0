using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>
/// The force along its axis that one fastener holds: what <see cref="Withdrawal"/> answers, or a figure of the caller's own.
/// The default value is a supplied capacity of nothing.
/// </summary>
/// <remarks>The methods of <see cref="Withdrawal"/> make one, and <see cref="Supplied(Force)"/> makes one of any force.</remarks>
public readonly struct WithdrawalCapacity : IEquatable<WithdrawalCapacity>
{
    /// <summary>What plywood holds against solid wood of the same density unless the caller knows better.</summary>
    private const double DefaultPlywood = 0.8;

    /// <summary>The share of an average ultimate load that the NDS allows: 1380 of 6900.</summary>
    private const double DesignShare = 0.2;

    private static readonly Allowed s_force = new(0, 1e6, "N");
    private static readonly Allowed s_plywood = new(Allowed.OneStep, 1, string.Empty, "more than 0, up to 1");

    private static readonly Source s_lagPenetration = Source.Published(
        Sources.Nds.Id, Sources.Nds.Title, Sources.Nds.Publisher, Sources.Nds.Year, "minimum penetration of lag screws 4 D", SourceReading.Copy, "answer at awc.org, May 2006; 4 D without the tip");

    private readonly WithdrawalCase _case;
    private readonly double _force;

    internal WithdrawalCapacity(in WithdrawalCase given)
    {
        _case = given;
        _force = Withdrawal.Solve(given, default(Silent)).Force;
    }

    /// <summary>The force along the fastener's axis. What kind of load it is says <see cref="Basis"/>.</summary>
    public Force Force => new(_force, ForceUnit.Newton);

    /// <summary>
    /// What each length of penetration holds, before Eurocode 5's limits on the head side and on short penetration; null where
    /// the capacity was supplied.
    /// </summary>
    public ForcePerLength? PerLength => IsSupplied ? null : new ForcePerLength(Numbers.PerLength, ForcePerLengthUnit.NewtonPerMillimeter);

    /// <summary>What kind of load <see cref="Force"/> is.</summary>
    public WithdrawalBasis Basis => _case.Formula switch
    {
        WithdrawalFormula.Supplied => WithdrawalBasis.Supplied,
        WithdrawalFormula.NdsNail or WithdrawalFormula.NdsWoodScrew or WithdrawalFormula.NdsLagScrew => WithdrawalBasis.NdsReferenceDesign,
        WithdrawalFormula.Eurocode5SmoothNail or WithdrawalFormula.Eurocode5Screw => WithdrawalBasis.Eurocode5Characteristic,
        _ => WithdrawalBasis.HandbookAverageUltimate,
    };

    /// <summary>Length of shank or thread in the holding member; null where the capacity was supplied.</summary>
    public Length? Penetration => IsSupplied ? null : Door.Millimetres(_case.Penetration);

    /// <summary>Penetration over diameter; null where the capacity was supplied.</summary>
    public double? PenetrationInDiameters => IsSupplied ? null : _case.Penetration / _case.Diameter;

    /// <summary>Eurocode 5's factor on a smooth nail less than 12 diameters deep, 0 to 1; 1 where there is no such rule.</summary>
    public double ShortPenetrationFactor => IsSmoothNailByEurocode5 ? Numbers.ShortPenetrationFactor : 1;

    /// <summary>Eurocode 5: timber thinner than this is to be predrilled for a smooth nail; from this thickness up it need not be. Null for every other method.</summary>
    public Length? PredrillBelow => IsSmoothNailByEurocode5 ? Door.Millimetres(PredrillingThickness) : null;

    /// <summary>The factor on withdrawal from plywood; null where the wood is solid.</summary>
    public double? PlywoodFactor => _case.Plywood == 0 ? null : _case.Plywood;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => IsSmoothNailByEurocode5 && (_case.PermanentLoad || Numbers.ShortPenetrationFactor == 0);

    /// <summary>What a person should know about the capacity, gravest first; put together on reading.</summary>
    /// <remarks>
    /// Codes: <c>fastening-nds-penetration-short</c>, <c>fastening-ultimate-not-design</c>, <c>fastening-characteristic-not-design</c>,
    /// <c>fastening-eurocode5-permanent-load</c>, <c>fastening-eurocode5-penetration-none</c>, <c>fastening-eurocode5-penetration-short</c>,
    /// <c>fastening-eurocode5-short-term-only</c>, <c>fastening-eurocode5-predrill</c>, <c>fastening-eurocode5-screw-diameter</c>, <c>fastening-eurocode5-screw-penetration-short</c>,
    /// <c>fastening-eurocode5-screw-angle</c>, <c>fastening-plywood-factor</c>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [];
            switch (Basis)
            {
                case WithdrawalBasis.NdsReferenceDesign:
                    AddNds(findings);
                    break;
                case WithdrawalBasis.HandbookAverageUltimate:
                    AddHandbook(findings);
                    break;
                case WithdrawalBasis.Eurocode5Characteristic:
                    AddEurocode5(findings);
                    break;
                default:
                    break;
            }

            AddPlywood(findings);
            return Finding.GravestFirst(findings);
        }
    }

    internal bool IsSmoothNailByEurocode5 => _case.Formula == WithdrawalFormula.Eurocode5SmoothNail;

    internal bool IsScrewByEurocode5 => _case.Formula == WithdrawalFormula.Eurocode5Screw;

    internal bool IsRefusedForPermanentLoad => IsSmoothNailByEurocode5 && _case.PermanentLoad;

    internal double Newtons => _force;

    private WithdrawalNumbers Numbers => Withdrawal.Solve(_case, default(Silent));

    private double PredrillingThickness => Grid.SnapUp(Numbers.PredrillingThickness);

    private bool IsSupplied => _case.Formula == WithdrawalFormula.Supplied;

    /// <summary>Whether two capacities answer the same question with the same figures.</summary>
    /// <param name="left">One capacity.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if method and all figures agree, lengths on the 1 nm grid.</returns>
    public static bool operator ==(WithdrawalCapacity left, WithdrawalCapacity right) => left.Equals(right);

    /// <summary>Whether two capacities differ in method or figures.</summary>
    /// <param name="left">One capacity.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if method or a figure differs.</returns>
    public static bool operator !=(WithdrawalCapacity left, WithdrawalCapacity right) => !left.Equals(right);

    /// <summary>A capacity of the caller's own: from tests, a supplier's sheet, or another method. It is taken for a load that may be put on.</summary>
    /// <param name="force">The force [force], 0 to 1 MN.</param>
    /// <returns>The capacity; nothing is allocated.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="force"/> is outside its range.</exception>
    /// <exception cref="ArgumentException"><paramref name="force"/> is in an undefined unit.</exception>
    public static WithdrawalCapacity Supplied(Force force)
    {
        double newtons = Door.Newtons(force, nameof(force), s_force, null);
        return new WithdrawalCapacity(new WithdrawalCase(WithdrawalFormula.Supplied, newtons, 0, 0));
    }

    /// <summary>All problems with the input of <see cref="Supplied(Force)"/>; nothing is thrown.</summary>
    /// <param name="force">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckSupplied(Force force)
    {
        List<InputProblem> problems = [];
        Door.Newtons(force, nameof(force), s_force, problems);
        return problems;
    }

    /// <summary>All problems with the input of <see cref="InPlywood(double)"/>; nothing is thrown.</summary>
    /// <param name="factor">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckInPlywood(double factor)
    {
        List<InputProblem> problems = [];
        Door.Number(factor, nameof(factor), s_plywood, problems);
        return problems;
    }

    /// <summary>The same fastener in plywood of the same density, which holds less than solid wood.</summary>
    /// <param name="factor">Withdrawal from the plywood over that from solid wood, more than 0 up to 1; default 0.8, judgement.</param>
    /// <returns>The capacity, with the finding <c>fastening-plywood-factor</c>; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: W_ply = k W. With Eurocode 5's smooth nail the plywood holds the point, and the head side is held as before.</para>
    /// <para>Validity: nails and screws through the faces, not into an edge. Asked twice, the last factor counts.</para>
    /// <para>Source: withdrawal-plywood (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="factor"/> is outside its range.</exception>
    /// <exception cref="ArgumentException"><paramref name="factor"/> is not a number.</exception>
    /// <example><code>
    /// WithdrawalCapacity solid = Withdrawal.NdsNail(new OvendrySpecificGravity(0.5), Mm(1.6), Mm(30));
    /// Force inPly = solid.InPlywood().Force;              // 64.59 N: 0.8 of 80.74
    /// </code></example>
    public WithdrawalCapacity InPlywood(double factor = DefaultPlywood) =>
        new(_case with { Plywood = Door.Number(factor, nameof(factor), s_plywood, null) });

    /// <summary>How the capacity comes about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Withdrawal.Solve(_case, recorder);
        return recorder.ToWorkings(_case.Formula switch
        {
            WithdrawalFormula.Supplied => "Withdrawal, supplied",
            WithdrawalFormula.NdsNail => "Withdrawal of a nail, NDS reference design value",
            WithdrawalFormula.NdsWoodScrew => "Withdrawal of a wood screw, NDS reference design value",
            WithdrawalFormula.NdsLagScrew => "Withdrawal of a lag screw, NDS reference design value",
            WithdrawalFormula.HandbookNail => "Withdrawal of a nail, Wood Handbook average ultimate",
            WithdrawalFormula.HandbookWoodScrew => "Withdrawal of a wood screw, Wood Handbook average ultimate",
            WithdrawalFormula.HandbookLagScrew => "Withdrawal of a lag screw, Wood Handbook average ultimate",
            WithdrawalFormula.Eurocode5SmoothNail => "Withdrawal of a smooth nail, Eurocode 5 characteristic",
            _ => "Withdrawal of a screw, Eurocode 5 characteristic",
        });
    }

    /// <summary>The capacity as flat figures.</summary>
    /// <returns>Force; unless supplied, force per length, penetration, that in diameters, the short-penetration factor; the plywood factor where there is one.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("force", _force, "N")];
        if (!IsSupplied)
        {
            figures.Add(new Figure("force-per-length", Numbers.PerLength, "N/mm"));
            figures.Add(new Figure("penetration", _case.Penetration, "mm"));
            figures.Add(new Figure("penetration-in-diameters", _case.Penetration / _case.Diameter, string.Empty));
            figures.Add(new Figure("short-penetration-factor", ShortPenetrationFactor, string.Empty));
        }

        if (IsSmoothNailByEurocode5)
        {
            figures.Add(new Figure("predrill-below", PredrillingThickness, "mm"));
        }

        if (_case.Plywood != 0)
        {
            figures.Add(PlywoodFigure);
        }

        return figures;
    }

    /// <inheritdoc/>
    public bool Equals(WithdrawalCapacity other) => _case.Agrees(other._case);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is WithdrawalCapacity other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((((int)_case.Formula * 397) ^ _case.Penetration.GetHashCode()) * 397 ^ _force.GetHashCode());

    /// <summary>Force in newtons and what kind of load it is, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Round(_force, 2)} N, {WithdrawalFindings.Words(Basis)}{(Basis == WithdrawalBasis.HandbookAverageUltimate ? ", not a design value" : string.Empty)}";

    internal static Source SourceOfPlywood(double factor) => factor == DefaultPlywood ? Sources.PlywoodWithdrawal : Sources.Given;

    /// <summary>Adds the plywood factor if it is the library's own.</summary>
    internal void AddDefaults(List<DefaultUsed> defaults)
    {
        if (_case.Plywood == DefaultPlywood)
        {
            defaults.Add(new DefaultUsed(PlywoodFigure, Sources.PlywoodWithdrawal));
        }
    }

    private Figure ForceFigure => new("force", _force, "N");

    private Figure PenetrationFigure => new("penetration", _case.Penetration, "mm");

    private Figure PlywoodFigure => new("plywood-factor", _case.Plywood, string.Empty);

    private string Diameters => Print.Round(_case.Penetration / _case.Diameter, 3);

    private void AddNds(List<Finding> findings)
    {
        bool lag = _case.Formula == WithdrawalFormula.NdsLagScrew;
        double least = Grid.Snap((lag ? 4 : 6) * _case.Diameter);
        if (_case.Penetration >= least)
        {
            return;
        }

        findings.Add(new Finding(
            "fastening-nds-penetration-short",
            Severity.Caution,
            $"The penetration of {Print.Mm(_case.Penetration)} is {Diameters} diameters; the NDS asks for {(lag ? "4 diameters without the tip" : "6 diameters, tip included")}, {Print.Mm(least)}, so the value lies outside what it covers.",
            [PenetrationFigure, new("least-penetration", least, "mm"), new("diameter", _case.Diameter, "mm")],
            lag ? s_lagPenetration : Sources.NdsMinimumPenetration));
    }

    private void AddHandbook(List<Finding> findings) => findings.Add(new Finding(
        WithdrawalFindings.UltimateNotDesign,
        Severity.Note,
        $"{Print.Round(_force, 2)} N is an average of the loads that pulled such fasteners out in tests, not a design value: half of them hold less. A design value by the NDS is about one fifth, here {Print.Round(_force * DesignShare, 2)} N.",
        [ForceFigure, new("one-fifth", _force * DesignShare, "N")],
        Sources.NailUltimate));

    private void AddEurocode5(List<Finding> findings)
    {
        double diameter = _case.Diameter;
        if (!IsSmoothNailByEurocode5)
        {
            AddEurocode5Screw(findings);
        }
        else
        {
            if (_case.PermanentLoad)
            {
                findings.Add(PermanentLoad());
            }
            else if (_case.HeadDiameter == 0)
            {
                // The plain question cannot say what kind of load it is; the nail with its members has said.
                findings.Add(new Finding(
                    WithdrawalFindings.ShortTermOnly,
                    Severity.Caution,
                    $"{Print.Round(_force, 2)} N, characteristic by Eurocode 5, is for a short-term load only: Eurocode 5 does not permit smooth nails under a permanent load along their axis, as a board hung under a ceiling is.",
                    [ForceFigure],
                    Sources.Eurocode5));
            }

            double none = Grid.Snap(8 * diameter), full = Grid.Snap(12 * diameter), kept = ShortPenetrationFactor;
            if (kept == 0)
            {
                findings.Add(new Finding(
                    "fastening-eurocode5-penetration-none",
                    Severity.Problem,
                    $"The point is {Print.Mm(_case.Penetration)} or {Diameters} diameters deep. Eurocode 5 gives a smooth nail nothing at 8 diameters, {Print.Mm(none)}, and less, and its whole withdrawal from 12 diameters, {Print.Mm(full)}.",
                    [PenetrationFigure, new("none-at", none, "mm"), new("all-from", full, "mm"), new("diameter", diameter, "mm")],
                    Sources.Eurocode5));
            }
            else if (_case.Penetration < full)
            {
                findings.Add(new Finding(
                    "fastening-eurocode5-penetration-short",
                    Severity.Caution,
                    $"The point is {Print.Mm(_case.Penetration)} or {Diameters} diameters deep. Eurocode 5 counts {Print.Round(kept, 3)} of the withdrawal; all of it from 12 diameters, {Print.Mm(full)}.",
                    [PenetrationFigure, new("short-penetration-factor", kept, string.Empty), new("all-from", full, "mm"), new("diameter", diameter, "mm")],
                    Sources.Eurocode5));
            }

            AddPredrill(findings);
        }

        findings.Add(new Finding(
            WithdrawalFindings.CharacteristicNotDesign,
            Severity.Note,
            $"{Print.Round(_force, 2)} N is a characteristic value, not a design value: multiply it by k_mod and divide it by gamma_M before a load is put against it.",
            [ForceFigure],
            Sources.Eurocode5FromMemory));
    }

    private void AddEurocode5Screw(List<Finding> findings)
    {
        double diameter = _case.Diameter, least = Grid.Snap(6 * diameter), degrees = Math.Round(_case.Angle * (180 / Math.PI), 9);
        if (diameter is < 6 or > 12)
        {
            findings.Add(new Finding(
                "fastening-eurocode5-screw-diameter",
                Severity.Caution,
                $"The thread of {Print.Mm(diameter)} is outside the 6 to 12 mm that Eurocode 5's formula is for; take the value as a guess, or a tested one from the screw's maker.",
                [new("diameter", diameter, "mm"), new("least-diameter", 6, "mm"), new("greatest-diameter", 12, "mm")],
                Sources.Eurocode5));
        }

        if (_case.Penetration < least)
        {
            findings.Add(new Finding(
                "fastening-eurocode5-screw-penetration-short",
                Severity.Caution,
                $"The thread is {Print.Mm(_case.Penetration)} or {Diameters} diameters deep; Eurocode 5 asks for 6 diameters, {Print.Mm(least)} (from memory).",
                [PenetrationFigure, new("least-penetration", least, "mm"), new("diameter", diameter, "mm")],
                Sources.Eurocode5FromMemory));
        }

        if (degrees < 30)
        {
            findings.Add(new Finding(
                "fastening-eurocode5-screw-angle",
                Severity.Caution,
                $"The screw lies {Print.Round(degrees, 1)}° from the grain; Eurocode 5's formula is for 30° and more (from memory), so the value does not cover it.",
                [new("angle-to-grain", degrees, "deg"), new("least-angle", 30, "deg")],
                Sources.Eurocode5FromMemory));
        }
    }

    private void AddPredrill(List<Finding> findings)
    {
        double least = PredrillingThickness;
        bool head = _case.HeadDiameter != 0 && _case.HeadSideThickness < least;
        bool holding = _case.HoldingThickness != 0 && _case.HoldingThickness < least;
        if (!head && !holding)
        {
            return;
        }

        double thickness = head && (!holding || _case.HeadSideThickness < _case.HoldingThickness) ? _case.HeadSideThickness : _case.HoldingThickness;
        findings.Add(new Finding(
            "fastening-eurocode5-predrill",
            Severity.Caution,
            $"A member of {Print.Mm(thickness)} is thinner than {Print.Mm(least)}: Eurocode 5 asks for predrilling, or the nail may split it.",
            [new("thickness", thickness, "mm"), new("predrill-below", least, "mm")],
            Sources.Eurocode5Predrill));
    }

    private void AddPlywood(List<Finding> findings)
    {
        if (_case.Plywood == 0)
        {
            return;
        }

        string basis = _case.Plywood == DefaultPlywood ? "the library's default, a judgement; override it with a test" : "the caller's figure";
        findings.Add(new Finding(
            "fastening-plywood-factor",
            Severity.Note,
            $"Withdrawal from plywood is taken as {Print.Round(_case.Plywood, 3)} of that from solid wood of the same density: {basis}.",
            [PlywoodFigure],
            SourceOfPlywood(_case.Plywood)));
    }

    internal Finding PermanentLoad() => new(
        "fastening-eurocode5-permanent-load",
        Severity.Problem,
        "Eurocode 5 does not let a smooth nail carry a permanent or long-term load along its axis, as a board hung under a ceiling is: its capacity counts as 0 N. Use screws, or adhesive of known strength.",
        [new("diameter", _case.Diameter, "mm")],
        Sources.Eurocode5);
}
