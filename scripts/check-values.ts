import { checkValuesCommand } from './check-values/command.ts'

const { status, stdout, stderr } = checkValuesCommand(process.argv.slice(2))
process.stdout.write(stdout)
process.stderr.write(stderr)
process.exitCode = status
