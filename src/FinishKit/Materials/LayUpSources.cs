namespace FinishKit;

/// <summary>What the layered model of plywood rests on.</summary>
internal static class LayUpSources
{
    internal static readonly Source Layers = Source.Derived("lay-up-bending", "Stiffness and strength of a sheet from its plies", "plane sections stay plane and plies do not slide: the sum of E z² over the plies about the axis where the sum of E z is none gives the stiffness, and the ply that reaches its own strength first gives the strength; both are written as those of a sheet of one stuff of the same thickness");

    /// <summary>Fitted to a table that is remembered: no better known than that.</summary>
    internal static readonly Source BirchPlies = Source.Published("birch-plies", "Handbook of Finnish Plywood", "Finnish Forest Industries Federation", 2007, "plies fitted to the table of birch plywood in bending", SourceReading.Memory, "plies of 17500 and 70 MPa, 1.4 mm inside and faces that make up the mean thickness, give every figure of the table, as remembered, to the digit printed");

    /// <summary>What figures worked from plies rest on: never on more than the plies do.</summary>
    internal static Source Of(Source? plies) => plies switch
    {
        null => Layers,

        // Worked on, what was read in the publication or derived is derived; all else is weaker than that and stays what it is.
        { Kind: SourceKind.Derived } or { Kind: SourceKind.Published, Reading: SourceReading.Original } => Source.Derived(Layers.Id, Layers.Title, $"{Layers.Note}; of the plies: {plies}"),
        _ => plies,
    };

    internal static readonly Source CrossRatio = Source.Judgement("default-ply-cross", "plies across the direction that is bent count nothing, 0 to 0.05 of their stiffness along: that is what gives the handbook's table");
}
