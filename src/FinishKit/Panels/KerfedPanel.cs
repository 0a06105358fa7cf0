using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A sheet to be bent by saw kerfs on its inside: what <see cref="KerfBend.Plan(KerfedPanel)"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="KerfBend.CheckPlan(KerfedPanel)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record KerfedPanel
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="outerRadius">Radius of the outer face, the one that is not cut.</param>
    /// <param name="bend">The angle that the panel turns through.</param>
    /// <param name="thickness">Thickness of the sheet, with its limits.</param>
    /// <param name="web">What is left under a kerf.</param>
    /// <param name="kerf">Width of a kerf.</param>
    [SetsRequiredMembers]
    public KerfedPanel(Length outerRadius, Angle bend, TolerancedLength thickness, Length web, Length kerf)
    {
        OuterRadius = outerRadius;
        Bend = bend;
        Thickness = thickness;
        Web = web;
        Kerf = kerf;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="outerRadius">Radius of the outer face, the one that is not cut.</param>
    /// <param name="bend">The angle that the panel turns through.</param>
    /// <param name="thickness">Thickness of the sheet, with its limits.</param>
    /// <param name="web">What is left under a kerf.</param>
    /// <param name="kerf">Width of a kerf.</param>
    /// <param name="depthError">See <see cref="DepthError"/>.</param>
    /// <param name="webSheet">See <see cref="WebSheet"/>.</param>
    [SetsRequiredMembers]
    public KerfedPanel(Length outerRadius, Angle bend, TolerancedLength thickness, Length web, Length kerf, Length? depthError = null, BentSheet? webSheet = null)
        : this(outerRadius, bend, thickness, web, kerf)
    {
        DepthError = depthError;
        WebSheet = webSheet;
    }

    /// <summary>Makes one by its members.</summary>
    public KerfedPanel()
    {
    }

    /// <summary>Radius of the outer face, the one that is not cut: more than the thickness up to 100 m.</summary>
    public required Length OuterRadius { get; init; }

    /// <summary>The angle that the panel turns through, 0.1° to 360°.</summary>
    public required Angle Bend { get; init; }

    /// <summary>Thickness of the sheet, more than 0 up to 200 mm, with its limits: what it is thinner or thicker goes off or on the web.</summary>
    public required TolerancedLength Thickness { get; init; }

    /// <summary>What is to be left under a kerf at the nominal thickness: more than 0, less than the thickness.</summary>
    public required Length Web { get; init; }

    /// <summary>Width of a kerf: what the saw takes, 0.2 to 20 mm.</summary>
    public required Length Kerf { get; init; }

    /// <summary>How far a kerf's depth may be off either way, 0 to 10 mm; null for 0.3 mm, judgement. It goes off the web, and the kerfs are counted by the deepest.</summary>
    public Length? DepthError { get; init; }

    /// <summary>Stiffness and strength of the web around the curve, and the factor, to hold its bend against; its thickness and a published radius are not used. Null leaves that out.</summary>
    public BentSheet? WebSheet { get; init; }

    private (double, double, TolerancedLength, double, double, double?, BentSheet?) Key => (
        Door.Millimetres(OuterRadius), Door.Degrees(Bend), Thickness, Door.Millimetres(Web), Door.Millimetres(Kerf), DepthError is { } error ? Door.Millimetres(error) : null, WebSheet);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(KerfedPanel? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Thickness, angle, radius, web and kerf, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Thickness} by {Print.Number(Door.Degrees(Bend))}° round {Print.Mm(Door.Millimetres(OuterRadius))}, web {Print.Mm(Door.Millimetres(Web))}, kerf {Print.Mm(Door.Millimetres(Kerf))}";
}
