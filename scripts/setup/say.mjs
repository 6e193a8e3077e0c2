/**
 * Tells a person on standard error; standard output belongs to the commands.
 * @param {string} line
 */
export function say(line) {
  process.stderr.write(`${line}\n`)
}
