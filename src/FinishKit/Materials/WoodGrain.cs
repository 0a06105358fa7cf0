namespace FinishKit;

/// <summary>Which way the growth rings lie across the width of a board.</summary>
public enum WoodGrain
{
    /// <summary>Not known: taken as <see cref="Tangential"/>, which moves most.</summary>
    Unknown = 0,

    /// <summary>Flat-sawn: the rings lie along the width, so that the board moves tangentially across it.</summary>
    Tangential = 1,

    /// <summary>Quarter-sawn: the rings stand square to the width, so that the board moves radially across it.</summary>
    Radial = 2,
}
