using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>A sheet of plywood in bending, from its plies: what <see cref="LayeredPly.InBending(PlyLayUp)"/> answers.</summary>
/// <remarks><see cref="LayeredPly.InBending(PlyLayUp)"/> makes one.</remarks>
public sealed class LayUpBending
{
    private readonly LayUpQuestion _question;
    private readonly LayUpNumbers _along, _across;

    internal LayUpBending(PlyLayUp layUp, LayUpQuestion question)
    {
        LayUp = layUp;
        _question = question;
        _along = question.Solve(true, default(Silent));
        _across = question.Solve(false, default(Silent));
        if (_along.IsUsable && _across.IsUsable)
        {
            Bending = new PlywoodBending(Thickness, Megapascals(_along.Elasticity), Megapascals(_across.Elasticity), Megapascals(_along.Strength), Megapascals(_across.Strength), LayUpSources.Of(layUp.Source)) { StrengthBasis = layUp.StrengthBasis };
        }

        Findings = FindAll();
        DefaultsUsed = question.RatioIsDefault ? [new DefaultUsed(new Figure("cross-ratio", 0, string.Empty), LayUpSources.CrossRatio)] : [];
    }

    /// <summary>What was asked.</summary>
    public PlyLayUp LayUp { get; }

    /// <summary>Thickness of the sheet: the sum of its plies.</summary>
    public Length Thickness => Door.Millimetres(Grid.Snap(_along.Thickness));

    /// <summary>Modulus of elasticity in bending, face grain along the span or around the curve; 0 where no ply counts that way.</summary>
    public Pressure ElasticityAlong => Megapascals(_along.Elasticity);

    /// <summary>Modulus of elasticity in bending, face grain across the span or along the axis of the curve; 0 where no ply counts that way.</summary>
    public Pressure ElasticityAcross => Megapascals(_across.Elasticity);

    /// <summary>Modulus of elasticity in stretching along the face grain: what layers of the sheet have when they are glued to each other. 0 where no ply counts that way.</summary>
    public Pressure StretchElasticityAlong => Megapascals(_along.StretchElasticity);

    /// <summary>The same across the face grain.</summary>
    public Pressure StretchElasticityAcross => Megapascals(_across.StretchElasticity);

    /// <summary>Bending strength, face grain along the span or around the curve; null where no ply that counts has one.</summary>
    public Pressure? StrengthAlong => double.IsNaN(_along.Strength) ? null : Megapascals(_along.Strength);

    /// <summary>Bending strength, face grain across the span or along the axis of the curve; null where no ply that counts has one.</summary>
    public Pressure? StrengthAcross => double.IsNaN(_across.Strength) ? null : Megapascals(_across.Strength);

    /// <summary>Where the sheet is neither stretched nor squeezed when bent along the face grain, from the first face; null where no ply counts that way.</summary>
    public Length? NeutralAxisAlong => Mm(_along.Axis);

    /// <summary>The same for bending across the face grain.</summary>
    public Length? NeutralAxisAcross => Mm(_across.Axis);

    /// <summary>The ply that reaches its strength first when bent along the face grain, counted from 0; of equal ones the first; null where none is known.</summary>
    public int? WeakestPlyAlong => _along.Weakest < 0 ? null : _along.Weakest;

    /// <summary>The same for bending across the face grain.</summary>
    public int? WeakestPlyAcross => _across.Weakest < 0 ? null : _across.Weakest;

    /// <summary>Whether the plies are the same counted from either face.</summary>
    public bool IsBalanced => _question.IsBalanced;

    /// <summary>Stiffness and strength as the tables of sheets have them, resting on what the plies rest on (<see cref="PlyLayUp.Source"/>); null where one of the directions has none.</summary>
    public PlywoodBending? Bending { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a lay-up.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>What a person should know about the lay-up, gravest first.</summary>
    /// <remarks>Codes: <c>materials-ply-unbalanced</c>, <c>materials-ply-face-across</c>, <c>materials-ply-one-way</c>, <c>materials-ply-cross-strength</c>, <c>materials-ply-memory</c>, <c>materials-ply-model</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the figures rest on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>A sheet with these figures, for the calculators that bend sheets: its label is its thickness, its basis that of its plies.</summary>
    /// <param name="name">What it is called.</param>
    /// <returns>The sheet; without bending figures where <see cref="Bending"/> is null.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public SheetGoods ToSheet(string name) => new(name, Thickness, Thickness, "plywood by its plies") { Plies = LayUp.Veneers.Count, Bending = Bending, Source = LayUpSources.Of(LayUp.Source) };

    /// <summary>How stiffness and strength follow from the plies, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        _question.Solve(true, recorder);
        _question.Solve(false, recorder);
        return recorder.ToWorkings("Plywood in bending, from its plies");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Thickness, plies, whether balanced (1 or 0), stiffness of both directions in bending and stretching, and strengths and neutral axes where there are any.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("thickness", Door.Millimetres(Thickness), "mm"),
            new("plies", LayUp.Veneers.Count, string.Empty),
            new("balanced", IsBalanced ? 1 : 0, string.Empty),
            new("elasticity-along", _along.Elasticity, "MPa"),
            new("elasticity-across", _across.Elasticity, "MPa"),
            new("stretch-elasticity-along", _along.StretchElasticity, "MPa"),
            new("stretch-elasticity-across", _across.StretchElasticity, "MPa"),
        ];
        Add("strength-along", _along.Strength, "MPa");
        Add("strength-across", _across.Strength, "MPa");
        Add("neutral-axis-along", Grid.Snap(_along.Axis), "mm");
        Add("neutral-axis-across", Grid.Snap(_across.Axis), "mm");
        return figures;

        void Add(string name, double value, string unit)
        {
            if (!double.IsNaN(value))
            {
                figures.Add(new Figure(name, value, unit));
            }
        }
    }

    /// <summary>Thickness, stiffness and strength, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(LayUp.Veneers.Count)} plies, {Print.Mm(_along.Thickness)}: E {Print.Round(_along.Elasticity, 0)} / {Print.Round(_across.Elasticity, 0)} MPa, f {Words(_along.Strength)} / {Words(_across.Strength)} MPa along / across the face grain";

    private static string Words(double strength) => double.IsNaN(strength) ? "unknown" : Print.Round(strength, 1);

    private static Pressure Megapascals(double value) => new(value, PressureUnit.Megapascal);

    private static Length? Mm(double millimetres) => double.IsNaN(millimetres) ? null : Door.Millimetres(Grid.Snap(millimetres));

    private IReadOnlyList<Finding> FindAll()
    {
        List<Finding> findings = [];
        if (!IsBalanced)
        {
            double off = Math.Max(Off(_along.Axis), Off(_across.Axis));
            findings.Add(new Finding(
                "materials-ply-unbalanced",
                Severity.Caution,
                $"The plies are not the same counted from either face: the sheet warps when its moisture changes, however it is bent. Its neutral axis lies {Print.Mm(off)} off its middle at most.",
                [new("neutral-axis-off", Grid.Snap(off), "mm")],
                LayUpSources.Layers));
        }

        if (!_question.FacesAreAlong)
        {
            findings.Add(new Finding(
                "materials-ply-face-across",
                Severity.Caution,
                "A face ply is laid across: along and across are named by the face grain, so see that both faces mean the same by them.",
                [],
                LayUpSources.Layers));
        }

        foreach ((LayUpNumbers numbers, string way) in new[] { (_along, "along"), (_across, "across") })
        {
            if (!numbers.IsUsable)
            {
                findings.Add(new Finding(
                    "materials-ply-one-way",
                    Severity.Caution,
                    $"No ply gives the sheet stiffness and strength to count on {way} the face grain: it has no bending figures, and bent that way it splits along the grain.",
                    [new("elasticity", numbers.Elasticity, "MPa")],
                    LayUpSources.Layers));
            }
        }

        if (_question.CrossStrengthIsMissing)
        {
            findings.Add(new Finding(
                "materials-ply-cross-strength",
                Severity.Caution,
                "Plies across are counted as stiff, and their strength across the grain was not given: they may crack before the strength stated here is reached.",
                [new("cross-ratio", _question.CrossRatio, string.Empty)],
                LayUpSources.Layers));
        }

        if (LayUp.Source is { Reading: SourceReading.Memory } remembered)
        {
            findings.Add(new Finding(
                "materials-ply-memory",
                Severity.Note,
                $"Stiffness and strength of the plies are from memory ({remembered.Id}), and so are those of the sheet: check them before you rely on them.",
                [],
                remembered));
        }

        findings.Add(new Finding(
            "materials-ply-model",
            Severity.Note,
            "The figures are worked from the plies, not tested: they hold for sound, well glued plies of the thickness they have after sanding. Voids, laps and weak glue lower them, and shear between plies adds to the deflection of spans under some 30 thicknesses.",
            [],
            LayUpSources.Layers));
        return Finding.GravestFirst(findings);

        double Off(double axis) => double.IsNaN(axis) ? 0 : Math.Abs(axis - (_along.Thickness / 2));
    }
}
