// Plain JavaScript, so that an older Node can still read it and say what is missing.
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 24 || (major === 24 && minor < 15)) {
  console.error(
    `Scribeline needs Node 24.15 or newer; this is Node ${process.versions.node}. ` +
      "Run npm ci again, which brings Node 24 where there is a package of it for this machine, or install Node 24 from nodejs.org.",
  );
  process.exit(1);
}
