// Types that break the floors, each in one way, and some that keep them. The namespace stands for the folder.
#pragma warning disable CA1052, CA1051, CA1822, CA1802, CA1852, CA1823, CA1018, CA1019, CA1813, CS0169, IDE0044, IDE0051, IDE0052, IDE0060

using System;
using System.Collections.Generic;

namespace FinishKit.Tests.Architecture.Fixture
{
    internal class Ground
    {
        internal static int Number() => 1;
    }

    internal class FromTheGround
    {
        internal static int Number() => Materials.Beside.Number();
    }
}

namespace FinishKit.Tests.Architecture.Fixture.Materials
{
    internal class Beside
    {
        internal static int Number() => Ground.Number();
    }
}

namespace FinishKit.Tests.Architecture.Fixture.Fastening
{
    internal class Upstairs
    {
        internal static int Number() => Ground.Number() + Materials.Beside.Number() + Geometry.Lawful.Number();
    }

    internal sealed class MarkAttribute : Attribute;
}

namespace FinishKit.Tests.Architecture.Fixture.Geometry
{
    internal class Lawful
    {
        internal static int Number() => Ground.Number() + Other.Number();
    }

    internal class Other
    {
        internal static int Number() => 2;
    }

    internal class Call
    {
        internal static int Number() => Fastening.Upstairs.Number();
    }

    internal class Signature
    {
        internal static void Take(Fastening.Upstairs? upstairs)
        {
        }
    }

    internal class Field
    {
        private Fastening.Upstairs? _upstairs;
    }

    internal class BaseType : Fastening.Upstairs;

    [Fastening.Mark]
    internal class Marked;

    [System.Diagnostics.DebuggerTypeProxy(typeof(Fastening.Upstairs))]
    internal class MarkedByType;

    internal class GenericArgument
    {
        internal static int Number() => new List<Fastening.Upstairs[]>().Count;
    }

    internal class Constraint<T>
        where T : Fastening.Upstairs
    {
    }

    internal class Lambda
    {
        internal static Func<object, bool> Make() => static value => value is Fastening.Upstairs;
    }

    internal class Neighbour
    {
        internal static int Number() => Materials.Beside.Number();
    }
}

namespace FinishKit.Tests.Architecture.Fixture.Attic
{
    internal class Shed;
}
