import type { Fault } from '#core/values/result.ts'

/** What a schema can find wrong with a field. */
export const schemaFaults = ['missing', 'unknown field', 'wrong value'] as const
export type SchemaFault = Fault<(typeof schemaFaults)[number]>

interface Issue {
  readonly code?: string | undefined
  readonly path: readonly PropertyKey[]
  readonly input?: unknown
  readonly keys?: readonly string[] | undefined
  readonly errors?: readonly (readonly Issue[])[] | undefined
}

/** Every fault that a schema found, with the path of its field; of a union, those of the shape that fits best. */
export function faultsOfIssues(issues: readonly unknown[], input: unknown): SchemaFault[] {
  return (issues as readonly Issue[]).flatMap(issue => faultsOfIssue(issue, input, ''))
}

function faultsOfIssue(issue: Issue, input: unknown, base: string): SchemaFault[] {
  const path = issue.path.reduce<string>(addStep, base)
  const found = issue.path.reduce<unknown>(valueAt, input)
  if (issue.keys !== undefined && issue.code === 'unrecognized_keys') {
    return issue.keys.map(key => ({ path: addStep(path, key), code: 'unknown field' }))
  }
  const best = found === undefined ? undefined : bestShape(issue.errors ?? [])
  if (best !== undefined) return best.flatMap(inner => faultsOfIssue(inner, found, path))
  return [{ path, code: found === undefined ? 'missing' : 'wrong value' }]
}

/** The shape whose fields the input has: the one with the fewest faults that are not about a wholly other shape. */
function bestShape(errors: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const inside = errors.filter(issues => issues.some(({ path }) => path.length > 0))
  return [...inside].sort((a, b) => strangeness(a) - strangeness(b))[0]
}

const strangeness = (issues: readonly Issue[]): number =>
  issues.length + issues.filter(({ code }) => code === 'unrecognized_keys').length * 100

const valueAt = (value: unknown, step: PropertyKey): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined

function addStep(base: string, step: PropertyKey): string {
  if (typeof step === 'number') return `${base}[${step}]`
  return base === '' ? String(step) : `${base}.${String(step)}`
}
