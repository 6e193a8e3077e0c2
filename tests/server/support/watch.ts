import type { Machine } from '#server/watch/machine.ts'

export interface FakeMachine extends Machine {
  wall: number
  steady: number
  freeBytes: number
  loop: { p99Ms: number; maxMs: number }
  backupAt: number | null
  usedAt: number
  /** Both clocks go on; a clock that is put goes on by more or less. */
  pass(ms: number, steadyMs?: number): void
}

/** A machine in good order, each reading of it set by hand. */
export function makeMachine(): FakeMachine {
  const machine: FakeMachine = {
    wall: Date.UTC(2026, 10, 28, 9),
    steady: 0,
    freeBytes: 20e9,
    loop: { p99Ms: 1, maxMs: 5 },
    backupAt: Date.UTC(2026, 10, 28, 3),
    usedAt: Date.UTC(2026, 10, 1),
    pass(ms, steadyMs = ms) {
      machine.wall += ms
      machine.steady += steadyMs
    },
    wallMs: () => machine.wall,
    steadyMs: () => machine.steady,
    diskFreeBytes: () => machine.freeBytes,
    walBytes: () => 4_000_000,
    loopDelay: () => machine.loop,
    lastBackupAt: () => machine.backupAt,
    firstUsedAt: () => machine.usedAt,
    stop: () => {},
  }
  return machine
}

export interface LogLine {
  readonly level: 'error' | 'warn' | 'info'
  readonly fields: Readonly<Record<string, unknown>>
  readonly line: string
}

/** A log that keeps its lines. */
export function makeLog() {
  const lines: LogLine[] = []
  const at = (level: LogLine['level']) => (fields: object, line?: string) =>
    void lines.push({ level, fields: fields as LogLine['fields'], line: line ?? '' })
  return { lines, logger: { error: at('error'), warn: at('warn'), info: at('info') } as never }
}
