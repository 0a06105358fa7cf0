using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A sheet on a surface that bows both ways: what <see cref="DoubleCurvature.Judge(BowedPanel)"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="DoubleCurvature.CheckJudge(BowedPanel)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record BowedPanel
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="sheet">The sheet, with the figures of the direction around the first curve.</param>
    /// <param name="around">Radius of the surface around the first curve.</param>
    /// <param name="along">Radius of the surface the other way.</param>
    /// <param name="girth">Size of the sheet around the first curve.</param>
    /// <param name="width">Size of the sheet the other way.</param>
    [SetsRequiredMembers]
    public BowedPanel(BentSheet sheet, Length around, Length along, Length girth, Length width)
    {
        Sheet = sheet;
        Around = around;
        Along = along;
        Girth = girth;
        Width = width;
    }

    /// <summary>Makes one by its members.</summary>
    public BowedPanel()
    {
    }

    /// <summary>The sheet, with the figures of the direction around the first curve; one from a table knows those of the other.</summary>
    public required BentSheet Sheet { get; init; }

    /// <summary>Radius of the surface around the first curve: positive where hollow to the room (more than the thickness), negative where it bulges into it, -1 km to 1 km, not 0.</summary>
    public required Length Around { get; init; }

    /// <summary>Radius of the surface the other way, in the same manner.</summary>
    public required Length Along { get; init; }

    /// <summary>Size of the sheet around the first curve, 1 mm to 100 m, and no more than once round it.</summary>
    public required Length Girth { get; init; }

    /// <summary>Size of the sheet the other way, 1 mm to 100 m, and no more than once round.</summary>
    public required Length Width { get; init; }

    private (BentSheet, double, double, double, double) Key => (Sheet, Door.Millimetres(Around), Door.Millimetres(Along), Door.Millimetres(Girth), Door.Millimetres(Width));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BowedPanel? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Sheet, sizes and radii, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Sheet}, {Print.Mm(Door.Millimetres(Girth))} round {Print.Mm(Door.Millimetres(Around))} by {Print.Mm(Door.Millimetres(Width))} round {Print.Mm(Door.Millimetres(Along))}";
}
