#if !EXPLORE
// The same random cases on every machine and every run, so that a change is judged by what it changes. To look further, build the
// tests with -p:Explore=true (see DEVELOPERS.md): then every run has a new seed, and a failure prints it.
[assembly: FsCheck.Xunit.Properties(Replay = "20261125,1849")]
#endif
