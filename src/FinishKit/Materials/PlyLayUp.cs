using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>What a sheet of plywood is laid up from: its plies from face to face, and their stiffness and strength with the grain.</summary>
/// <remarks>Nothing is checked here: <see cref="LayeredPly.CheckInBending(PlyLayUp)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record PlyLayUp
{
    internal const int MostVeneers = 99;

    private readonly IReadOnlyList<Veneer> _veneers = null!;

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="veneers">The plies, from one face to the other.</param>
    /// <param name="elasticity">Mean modulus of elasticity of a ply with its grain.</param>
    /// <param name="bendingStrength">Bending strength of a ply with its grain.</param>
    [SetsRequiredMembers]
    public PlyLayUp(IReadOnlyList<Veneer> veneers, Pressure elasticity, Pressure bendingStrength)
    {
        Veneers = veneers;
        Elasticity = elasticity;
        BendingStrength = bendingStrength;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="veneers">The plies, from one face to the other.</param>
    /// <param name="elasticity">Mean modulus of elasticity of a ply with its grain.</param>
    /// <param name="bendingStrength">Bending strength of a ply with its grain.</param>
    /// <param name="strengthBasis">See <see cref="StrengthBasis"/>.</param>
    /// <param name="crossRatio">See <see cref="CrossRatio"/>.</param>
    /// <param name="crossStrength">See <see cref="CrossStrength"/>.</param>
    /// <param name="source">See <see cref="Source"/>.</param>
    [SetsRequiredMembers]
    public PlyLayUp(
        IReadOnlyList<Veneer> veneers,
        Pressure elasticity,
        Pressure bendingStrength,
        PlywoodStrengthBasis strengthBasis = PlywoodStrengthBasis.Characteristic,
        double? crossRatio = null,
        Pressure? crossStrength = null,
        Source? source = null)
        : this(veneers, elasticity, bendingStrength)
    {
        StrengthBasis = strengthBasis;
        CrossRatio = crossRatio;
        CrossStrength = crossStrength;
        Source = source;
    }

    /// <summary>Makes one by its members.</summary>
    public PlyLayUp()
    {
    }

    /// <summary>The plies, from one face to the other: 1 to 99, together up to 200 mm.</summary>
    public required IReadOnlyList<Veneer> Veneers
    {
        get => _veneers;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _veneers = Lists.Keep(value, MostVeneers);
    }

    /// <summary>Mean modulus of elasticity of a ply with its grain, 1 to 100,000 MPa; a ply may have its own.</summary>
    public required Pressure Elasticity { get; init; }

    /// <summary>Bending strength of a ply with its grain, 0.1 to 1000 MPa; a ply may have its own.</summary>
    public required Pressure BendingStrength { get; init; }

    /// <summary>What <see cref="BendingStrength"/> is. Default: characteristic.</summary>
    public PlywoodStrengthBasis StrengthBasis { get; init; }

    /// <summary>Stiffness of a ply across its grain over that along it, 0 to 1; null for 0, judgement: plies across count nothing.</summary>
    public double? CrossRatio { get; init; }

    /// <summary>Strength of a ply across its grain, 0.1 to 1000 MPa; null: plies across are not looked at for strength.</summary>
    public Pressure? CrossStrength { get; init; }

    /// <summary>Where stiffness and strength of the plies are from; null: the caller's own. The sheet's figures rest on no more than this.</summary>
    public Source? Source { get; init; }

    private (double, double, PlywoodStrengthBasis, double?, double?) Key =>
        (Door.Megapascals(Elasticity), Door.Megapascals(BendingStrength), StrengthBasis, CrossRatio, CrossStrength is { } strength ? Door.Megapascals(strength) : null);

    /// <summary>Birch plywood: plies of 17,500 and 70 MPa, 1.4 mm inside, the faces make up the thickness; fitted to a table that is from memory.</summary>
    /// <param name="thickness">Mean thickness of the sheet [length], more than 0 up to 200 mm, and more than the inner plies take: 6.4 mm for five plies sold as 6.5 mm.</param>
    /// <param name="plies">How many plies, odd, 3 to 99.</param>
    /// <returns>The lay-up.</returns>
    /// <exception cref="System.ArgumentException">A value is outside its range or the length in an undefined unit.</exception>
    public static PlyLayUp Birch(Length thickness, int plies) =>
        new(Veneer.Alternating(thickness, plies, Door.Millimetres(1.4)), new Pressure(17_500, PressureUnit.Megapascal), new Pressure(70, PressureUnit.Megapascal)) { Source = LayUpSources.BirchPlies };

    /// <summary>Whether every ply and figure is of equal amount, whatever its unit; sources aside.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(PlyLayUp? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Veneers, other.Veneers, MostVeneers, static (one, same) => Equals(one, same));

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Number of plies, stiffness and strength, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Veneers?.Count ?? 0)} plies of E {Print.Number(Door.Megapascals(Elasticity))} MPa, f {Print.Number(Door.Megapascals(BendingStrength))} MPa";
}
