namespace FinishKit;

/// <summary>How much a <see cref="Finding"/> matters. Values may be added; compare with <c>&gt;=</c> where you mean "at least".</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing is wrong.</summary>
    Note = 0,

    /// <summary>The design works only if something is watched, checked or accepted.</summary>
    Caution = 1,

    /// <summary>The design as given should not be built.</summary>
    Problem = 2,
}
