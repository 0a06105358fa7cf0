using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>What a section is cut from: it decides how much of the table's stiffness and strength is taken.</summary>
public enum SectionGrade
{
    /// <summary>A board with knots: 0.8 of the stiffness, a quarter of the modulus of rupture (judgement).</summary>
    KnottyBoard = 0,

    /// <summary>A clear board: its whole stiffness, a third of the modulus of rupture (judgement).</summary>
    ClearBoard = 1,

    /// <summary>Plywood with a characteristic strength: its whole stiffness, half the strength (judgement).</summary>
    Plywood = 2,

    /// <summary>Stiffness and strength are those to design with, nothing is taken off.</summary>
    DesignValues = 3,
}

/// <summary>The section of a board, strip or panel that spans: a rectangle lying flat, and what it is made of.</summary>
public sealed record BeamSection
{
    private static readonly Allowed s_width = new(Allowed.OneStep, 1e5, "mm");
    private static readonly Allowed s_thickness = new(Allowed.OneStep, 1000, "mm");
    private static readonly Allowed s_elasticity = new(1, 1e6, "MPa");
    private static readonly Allowed s_strength = new(0.01, 10_000, "MPa");
    private static readonly Allowed s_factor = new(0.01, 1, string.Empty);
    private static readonly Allowed s_divisor = new(1, 100, string.Empty);

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="width">Width.</param>
    /// <param name="thickness">Net thickness.</param>
    /// <param name="elasticity">Modulus of elasticity.</param>
    [SetsRequiredMembers]
    public BeamSection(Length width, Length thickness, Pressure elasticity)
    {
        Width = width;
        Thickness = thickness;
        Elasticity = elasticity;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="width">Width.</param>
    /// <param name="thickness">Net thickness.</param>
    /// <param name="elasticity">Modulus of elasticity.</param>
    /// <param name="bendingStrength">See <see cref="BendingStrength"/>.</param>
    /// <param name="elasticitySource">See <see cref="ElasticitySource"/>.</param>
    /// <param name="strengthSource">See <see cref="StrengthSource"/>.</param>
    /// <param name="grade">See <see cref="Grade"/>.</param>
    /// <param name="stiffnessFactor">See <see cref="StiffnessFactor"/>.</param>
    /// <param name="strengthDivisor">See <see cref="StrengthDivisor"/>.</param>
    [SetsRequiredMembers]
    public BeamSection(
        Length width,
        Length thickness,
        Pressure elasticity,
        Pressure? bendingStrength = null,
        Source? elasticitySource = null,
        Source? strengthSource = null,
        SectionGrade grade = SectionGrade.KnottyBoard,
        double? stiffnessFactor = null,
        double? strengthDivisor = null)
        : this(width, thickness, elasticity)
    {
        BendingStrength = bendingStrength;
        ElasticitySource = elasticitySource;
        StrengthSource = strengthSource;
        Grade = grade;
        StiffnessFactor = stiffnessFactor;
        StrengthDivisor = strengthDivisor;
    }

    /// <summary>Makes one by its members.</summary>
    public BeamSection()
    {
    }

    /// <summary>Width, across the span, more than 0 up to 100 m.</summary>
    public required Length Width { get; init; }

    /// <summary>Net thickness, in the direction of the load, more than 0 up to 1 m: what is left under grooves and beads.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Modulus of elasticity in bending as the table has it (clear wood, or plywood in the direction of the span), 1 to 1,000,000 MPa.</summary>
    public required Pressure Elasticity { get; init; }

    /// <summary>Bending strength as the table has it (modulus of rupture of clear wood, characteristic strength of plywood), 0.01 to 10,000 MPa; null leaves stress unchecked.</summary>
    public Pressure? BendingStrength { get; init; }

    /// <summary>Where the modulus of elasticity is from; null: the caller's own. Equality does not look at it.</summary>
    public Source? ElasticitySource { get; init; }

    /// <summary>Where the bending strength is from; null: the caller's own. Equality does not look at it.</summary>
    public Source? StrengthSource { get; init; }

    /// <summary>What it is cut from.</summary>
    public SectionGrade Grade { get; init; }

    /// <summary>Share of the stiffness that is counted, 0.01 to 1; null for that of the grade.</summary>
    public double? StiffnessFactor { get; init; }

    /// <summary>What the strength is divided by to give the stress allowed, 1 to 100; null for that of the grade.</summary>
    public double? StrengthDivisor { get; init; }

    private (double, double, double, double?, SectionGrade, double?, double?) Key => (
        Door.Millimetres(Width), Door.Millimetres(Thickness), Door.Megapascals(Elasticity), BendingStrength is { } strength ? Door.Megapascals(strength) : null, Grade, StiffnessFactor, StrengthDivisor);

    /// <summary>A board of a species, with the stiffness and strength of its clear wood.</summary>
    /// <param name="width">Width across the span [length], more than 0 up to 100 m.</param>
    /// <param name="thickness">Net thickness [length], more than 0 up to 1 m.</param>
    /// <param name="species">The species; its table row has a modulus of elasticity.</param>
    /// <param name="grade">Whether the board has knots.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="species"/> is null.</exception>
    /// <exception cref="ArgumentException">A length is outside its range, the species has no modulus of elasticity, or the grade is not one of a board.</exception>
    public static BeamSection OfBoard(Length width, Length thickness, WoodSpecies species, SectionGrade grade = SectionGrade.KnottyBoard)
    {
        Door.Millimetres(width, nameof(width), s_width, null);
        Door.Millimetres(thickness, nameof(thickness), s_thickness, null);
        Door.IsMissing(species, new Name(nameof(species)), "a species", null);
        if (species.Elasticity is not { } elasticity)
        {
            throw new InputProblem(nameof(species), species.Name, "a species with a modulus of elasticity", isRange: false).ToException();
        }

        if (grade is not (SectionGrade.KnottyBoard or SectionGrade.ClearBoard))
        {
            throw new InputProblem(nameof(grade), Print.Number((int)grade), "KnottyBoard or ClearBoard", isRange: true).ToException();
        }

        return new BeamSection(width, thickness, elasticity)
        {
            BendingStrength = species.BendingStrength,
            Grade = grade,
            ElasticitySource = species.ElasticitySource,
            StrengthSource = species.BendingStrengthSource,
        };
    }

    /// <summary>A strip or panel of plywood, at the mean thickness of its sheet.</summary>
    /// <param name="width">Width across the span [length], more than 0 up to 100 m.</param>
    /// <param name="sheet">The sheet it is cut from; its table row has bending figures.</param>
    /// <param name="grain">Which way the face grain runs.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is null.</exception>
    /// <exception cref="ArgumentException">The width is outside its range, the sheet has no bending figures, or the grain is none.</exception>
    public static BeamSection OfPlywood(Length width, SheetGoods sheet, SpanGrain grain)
    {
        Door.Millimetres(width, nameof(width), s_width, null);
        Door.IsMissing(sheet, new Name(nameof(sheet)), "a sheet", null);
        if (sheet.Bending is not { } bending)
        {
            throw new InputProblem(nameof(sheet), sheet.Name, "a sheet with bending figures", isRange: false).ToException();
        }

        if (grain is not (SpanGrain.AcrossTheSpan or SpanGrain.AlongTheSpan))
        {
            throw new InputProblem(nameof(grain), Print.Number((int)grain), "AcrossTheSpan or AlongTheSpan", isRange: true).ToException();
        }

        bool along = grain == SpanGrain.AlongTheSpan;
        return new BeamSection(width, bending.MeanThickness, along ? bending.ElasticityAlong : bending.ElasticityAcross)
        {
            BendingStrength = along ? bending.StrengthAlong : bending.StrengthAcross,
            ElasticitySource = bending.Source,
            StrengthSource = bending.Source,
            Grade = bending.StrengthBasis == PlywoodStrengthBasis.AllowableDesign ? SectionGrade.DesignValues : SectionGrade.Plywood,
        };
    }

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BeamSection? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Width, thickness and modulus, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Door.Millimetres(Width))} x {Print.Mm(Door.Millimetres(Thickness))}, E {Print.Number(Door.Megapascals(Elasticity))} MPa";

    internal SectionNumbers Read(Name name, List<InputProblem>? problems)
    {
        double width = Door.Millimetres(Width, name.Then(".Width"), s_width, problems);
        double thickness = Door.Millimetres(Thickness, name.Then(".Thickness"), s_thickness, problems);
        double elasticity = Door.Megapascals(Elasticity, name.Then(".Elasticity"), s_elasticity, problems);
        double strength = BendingStrength is { } given ? Door.Megapascals(given, name.Then(".BendingStrength"), s_strength, problems) : double.NaN;
        if (Grade is < SectionGrade.KnottyBoard or > SectionGrade.DesignValues)
        {
            Door.Report(new InputProblem(name.Then(".Grade").ToString(), Print.Number((int)Grade), "KnottyBoard, ClearBoard, Plywood or DesignValues", isRange: true), problems);
        }

        double factor = StiffnessFactor is { } share ? Door.Number(share, name.Then(".StiffnessFactor"), s_factor, problems) : double.NaN;
        double divisor = StrengthDivisor is { } number ? Door.Number(number, name.Then(".StrengthDivisor"), s_divisor, problems) : double.NaN;
        return new SectionNumbers(width, thickness, elasticity, strength, Grade, factor, divisor) { ElasticitySource = ElasticitySource, StrengthSource = StrengthSource };
    }
}

/// <summary>A section as plain numbers; NaN for what was left to the default, and for a strength that is not known.</summary>
internal readonly struct SectionNumbers(double width, double thickness, double elasticity, double strength, SectionGrade grade, double factor, double divisor)
{
    internal double Width { get; } = width;

    internal double Thickness { get; } = thickness;

    internal double Elasticity { get; } = elasticity;

    internal double Strength { get; } = strength;

    internal SectionGrade Grade { get; } = grade;

    internal Source? ElasticitySource { get; init; }

    internal Source? StrengthSource { get; init; }

    internal bool FactorIsDefault => double.IsNaN(factor);

    internal bool DivisorIsDefault => double.IsNaN(divisor);

    internal double Factor => !double.IsNaN(factor) ? factor : Grade == SectionGrade.KnottyBoard ? 0.8 : 1;

    internal double Divisor => !double.IsNaN(divisor) ? divisor : Grade switch { SectionGrade.KnottyBoard => 4, SectionGrade.ClearBoard => 3, SectionGrade.Plywood => 2, _ => 1 };

    /// <summary>The numbers that every beam starts from; the allowed stress is NaN where the strength is not known.</summary>
    internal SectionStiffness Solve<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double width = Width, thickness = Thickness, tableElasticity = Elasticity, stiffnessFactor = Factor;
        trace.Given("b", width, "mm", Sources.Given);
        trace.Given("t", thickness, "mm", Sources.Given);
        trace.Given("E_0", tableElasticity, "MPa", ElasticitySource ?? Sources.Given);
        trace.Given("k_E", stiffnessFactor, string.Empty, FactorIsDefault ? BeamDefaults.StiffnessSource : Sources.Given);
        double elasticity = trace.Step("E", nameof(elasticity), stiffnessFactor * tableElasticity, "MPa", Sources.Beam);
        double inertia = trace.Step("I", nameof(inertia), width * thickness * thickness * thickness / 12, "mm4", Sources.Beam);
        double modulus = trace.Step("Z", nameof(modulus), width * thickness * thickness / 6, "mm3", Sources.Beam);
        double allowed = double.NaN;
        if (!double.IsNaN(Strength))
        {
            double strength = Strength, divisor = Divisor;
            trace.Given("f", strength, "MPa", StrengthSource ?? Sources.Given);
            trace.Given("n_f", divisor, string.Empty, DivisorIsDefault ? BeamDefaults.StrengthSource : Sources.Given);
            allowed = trace.Step("f_allowed", nameof(allowed), strength / divisor, "MPa", Sources.Beam);
        }

        return new SectionStiffness(elasticity, inertia, modulus, allowed);
    }

    internal void AddDefaults(List<DefaultUsed> defaults)
    {
        if (FactorIsDefault && Grade != SectionGrade.DesignValues)
        {
            defaults.Add(new DefaultUsed(new Figure("stiffness-factor", Factor, string.Empty), BeamDefaults.StiffnessSource));
        }

        if (DivisorIsDefault && Grade != SectionGrade.DesignValues && !double.IsNaN(Strength))
        {
            defaults.Add(new DefaultUsed(new Figure("strength-divisor", Divisor, string.Empty), BeamDefaults.StrengthSource));
        }
    }
}

/// <summary>Modulus of elasticity counted, second moment of area, section modulus, stress allowed (NaN where unknown).</summary>
internal readonly struct SectionStiffness(double elasticity, double inertia, double modulus, double allowed)
{
    internal double Elasticity { get; } = elasticity;

    internal double Inertia { get; } = inertia;

    internal double Modulus { get; } = modulus;

    internal double Allowed { get; } = allowed;

    internal double Stiffness => Elasticity * Inertia;
}
