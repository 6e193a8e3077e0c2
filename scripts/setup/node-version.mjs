// Imported first by every command. Plain syntax: an old Node must get as far as saying so.
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)

if (major < 20 || (major === 20 && minor < 19)) {
  process.stderr.write(`Six Threes needs Node 20.19 or newer; this is ${process.versions.node}.\n`)
  process.exit(1)
}
