using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How input records keep and compare the lists they are given. A list may claim any number of entries: past the most that is allowed it is not walked.</summary>
internal static class Lists
{
    /// <summary>A copy, so that nobody changes it afterwards; a list that is too long is kept as it is, for the check to refuse by its count.</summary>
    internal static IReadOnlyList<T> Keep<T>(IReadOnlyList<T>? list, int most) => list is null || list.Count > most ? list! : [.. list];

    /// <summary>Whether two lists hold the same in the same order; lists that are too long only where they are one.</summary>
    internal static bool Same<T>(IReadOnlyList<T>? left, IReadOnlyList<T>? right, int most, Func<T, T, bool> equal)
    {
        if (left is null || right is null || left.Count != right.Count || left.Count > most)
        {
            return ReferenceEquals(left, right);
        }

        for (int i = 0; i < left.Count; i++)
        {
            if (!equal(left[i], right[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The same for lengths, by amount.</summary>
    internal static bool Same(IReadOnlyList<Length>? left, IReadOnlyList<Length>? right, int most) =>
        Same(left, right, most, static (one, other) => Door.Millimetres(one).Equals(Door.Millimetres(other)));
}
