namespace FinishKit;

/// <summary>What the layered model of plywood rests on.</summary>
internal static class LayUpSources
{
    internal static readonly Source Layers = Source.Derived("lay-up-bending", "Stiffness and strength of a sheet from its plies", "plane sections stay plane and plies do not slide: the sum of E z² over the plies about the axis where the sum of E z is none gives the stiffness, and the ply that reaches its own strength first gives the strength; both are written as those of a sheet of one stuff of the same thickness");

    internal static readonly Source BirchPlies = Source.Derived("birch-plies", "Plies of birch plywood", "plies of 17500 and 70 MPa, 1.4 mm inside and faces that make up the mean thickness, give every figure of the handbook's table, as remembered, to the digit printed");

    internal static readonly Source CrossRatio = Source.Judgement("default-ply-cross", "plies across the direction that is bent count nothing, 0 to 0.05 of their stiffness along: that is what gives the handbook's table");
}
