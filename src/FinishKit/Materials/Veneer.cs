using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Which way the grain of a ply runs, against the grain of the sheet's faces.</summary>
public enum PlyDirection
{
    /// <summary>Square to the face grain.</summary>
    Across = 0,

    /// <summary>With the face grain.</summary>
    Along = 1,
}

/// <summary>One ply of a lay-up.</summary>
/// <remarks>Nothing is checked here: <see cref="LayeredPly.CheckInBending(PlyLayUp)"/> reports all problems.</remarks>
public sealed record Veneer
{
    private static readonly Allowed s_sheet = new(Allowed.OneStep, 200, "mm");
    private static readonly Allowed s_plies = new(3, PlyLayUp.MostVeneers, "plies", "an odd number of plies, 3 to 99");

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="thickness">Thickness in the finished sheet.</param>
    /// <param name="direction">Which way its grain runs.</param>
    [SetsRequiredMembers]
    public Veneer(Length thickness, PlyDirection direction)
    {
        Thickness = thickness;
        Direction = direction;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="thickness">Thickness in the finished sheet.</param>
    /// <param name="direction">Which way its grain runs.</param>
    /// <param name="elasticity">See <see cref="Elasticity"/>.</param>
    /// <param name="bendingStrength">See <see cref="BendingStrength"/>.</param>
    [SetsRequiredMembers]
    public Veneer(Length thickness, PlyDirection direction, Pressure? elasticity = null, Pressure? bendingStrength = null)
        : this(thickness, direction)
    {
        Elasticity = elasticity;
        BendingStrength = bendingStrength;
    }

    /// <summary>Makes one by its members.</summary>
    public Veneer()
    {
    }

    /// <summary>Thickness in the finished sheet, more than 0 up to 50 mm.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Which way its grain runs.</summary>
    public required PlyDirection Direction { get; init; }

    /// <summary>Modulus of elasticity with its grain, 1 to 100,000 MPa; null for that of the lay-up.</summary>
    public Pressure? Elasticity { get; init; }

    /// <summary>Bending strength with its grain, 0.1 to 1000 MPa; null for that of the lay-up.</summary>
    public Pressure? BendingStrength { get; init; }

    private (double, PlyDirection, double?, double?) Key => (
        Door.Millimetres(Thickness), Direction, Elasticity is { } elasticity ? Door.Megapascals(elasticity) : null, BendingStrength is { } strength ? Door.Megapascals(strength) : null);

    /// <summary>Plies that turn by a right angle from one to the next, the faces along; the two faces share what the inner plies leave.</summary>
    /// <param name="thickness">Thickness of the sheet [length], more than 0 up to 200 mm, and more than the inner plies take.</param>
    /// <param name="plies">How many plies, odd, 3 to 99.</param>
    /// <param name="innerPly">Thickness of each ply but the faces [length], more than 0 up to 50 mm.</param>
    /// <returns>The plies from face to face.</returns>
    /// <exception cref="System.ArgumentException">A value is outside its range or a length in an undefined unit.</exception>
    public static IReadOnlyList<Veneer> Alternating(Length thickness, int plies, Length innerPly)
    {
        double sheet = Door.Millimetres(thickness, nameof(thickness), s_sheet, null);
        Door.Number(plies % 2 == 0 ? -1 : plies, nameof(plies), s_plies, null);
        double inner = Door.Millimetres(innerPly, nameof(innerPly), LayeredPly.PlyThickness, null);
        double face = Grid.Snap((sheet - ((plies - 2) * inner)) / 2);
        if (face <= 0)
        {
            Door.Report(new InputProblem(nameof(thickness), Print.Number(sheet) + " mm", $"more than the {Print.Number(plies - 2)} inner plies take, {Print.Number(Grid.Snap((plies - 2) * inner))} mm", isRange: true), null);
        }

        Veneer[] veneers = new Veneer[plies];
        for (int i = 0; i < plies; i++)
        {
            veneers[i] = new Veneer(Door.Millimetres(i == 0 || i == plies - 1 ? face : inner), i % 2 == 0 ? PlyDirection.Along : PlyDirection.Across);
        }

        return [.. veneers];
    }

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(Veneer? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Thickness and direction, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Mm(Door.Millimetres(Thickness))} {(Direction == PlyDirection.Along ? "along" : "across")}";
}
