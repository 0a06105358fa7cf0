namespace FinishKit;

/// <summary>What a board or panel finishes: it decides the default load.</summary>
public enum Surface
{
    /// <summary>A wall: people lean on it.</summary>
    Wall = 0,

    /// <summary>A ceiling: a hand pushes against it.</summary>
    Ceiling = 1,
}
