import * as z from 'zod/mini'
import { faultOfOp, lastTick, type Op, textOfOp, withdrawn } from '#core/log/op.ts'
import { parseKey } from '#core/outing/keys.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { deviceId, groupId, logId, opIdSchema, textUpTo, timeMs, wholeFrom } from './atoms.ts'
import { factSchemas, jsonSchema } from './facts.ts'
import { limits } from './limits.ts'
import { proves } from './proof.ts'

const factSchema = z.strictObject({
  key: z.string().check(z.maxLength(limits.keyLength)),
  value: jsonSchema,
  replaces: z.array(opIdSchema).check(z.maxLength(limits.replacesInFact)),
})

export const opSchema = proves<Op>()(
  z.strictObject({
    log: logId,
    scope: z.nullable(groupId),
    device: deviceId,
    n: wholeFrom(1, 4_294_967_295),
    tick: wholeFrom(1, lastTick),
    at: timeMs,
    act: textUpTo(limits.actLength),
    facts: z.array(factSchema).check(z.minLength(1), z.maxLength(limits.factsInOp)),
  }),
)

/** Why a text is no op of this version. `newer` may well be one of a later version's: put off, never refused. */
export const opProblems = ['not json', 'too large', 'wrong shape', 'not canonical', 'wrong value', 'newer'] as const

export interface OpProblem {
  readonly code: (typeof opProblems)[number] | NonNullable<ReturnType<typeof faultOfOp>>['code']
  /** JSON path of the field inside the op; empty for the whole. */
  readonly path: string
}

/** The schema of the values under a key, or null where a log of this kind has no such key. */
export type SchemaOfKey = (key: string) => Pick<z.ZodMiniType, 'safeParse'> | null

/** What an outing's log may hold. */
export const schemaInOuting: SchemaOfKey = key => {
  const parts = parseKey(key)
  return parts && factSchemas[parts.kind]
}

/**
 * Reads an op's text as strictly as a server does: shape, canonical form, keys, and every value this version knows; of an
 * outing's log unless another table of keys is given.
 */
export function parseOp(text: string, schemaOf: SchemaOfKey = schemaInOuting): Result<Op, OpProblem> {
  const shaped = parseOpShape(text)
  if (!shaped.ok) return shaped
  const problem = problemOfFacts(shaped.value, schemaOf)
  return problem ? err(problem) : shaped
}

/** Reads an op's text as a phone does what comes down: any sound op, whatever its facts say. */
export function parseOpShape(text: string): Result<Op, OpProblem> {
  if (text.length > limits.opLength || isTooDeep(text)) return err({ code: 'too large', path: '' })
  const parsed = parseJson(text)
  if (!parsed.ok) return parsed
  const shaped = opSchema.safeParse(parsed.value)
  if (!shaped.success) return err({ code: 'wrong shape', path: pathOfIssue(shaped.error.issues[0]) })
  const op: Op = shaped.data
  if (textOfOp(op) !== text) return err({ code: 'not canonical', path: '' })
  const fault = faultOfOp(op)
  return fault ? err({ code: fault.code, path: `facts[${fault.fact}].key` }) : ok(op)
}

function problemOfFacts(op: Op, schemaOf: SchemaOfKey): OpProblem | null {
  for (const [index, fact] of op.facts.entries()) {
    const schema = schemaOf(fact.key)
    if (schema === null) return { code: 'newer', path: `facts[${index}].key` }
    if (fact.value === withdrawn) continue
    const parsed = schema.safeParse(fact.value)
    if (parsed.success) continue
    return { code: 'wrong value', path: joinPath(`facts[${index}].value`, pathOfIssue(parsed.error?.issues[0])) }
  }
  return null
}

function parseJson(text: string): Result<unknown, OpProblem> {
  try {
    return ok(JSON.parse(text))
  } catch {
    return err({ code: 'not json', path: '' })
  }
}

const [quote, backslash, openBrace, closeBrace, openBracket, closeBracket] = [0x22, 0x5c, 0x7b, 0x7d, 0x5b, 0x5d]

/** Counts brackets, text in quotes left out, before anything recursive looks at the value. */
export function isTooDeep(text: string, deepest: number = limits.opDepth): boolean {
  let depth = 0
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i)
    if (quoted) {
      if (c === backslash) i++
      else if (c === quote) quoted = false
    } else if (c === quote) quoted = true
    else if (c === openBrace || c === openBracket) {
      depth++
      if (depth > deepest) return true
    } else if (c === closeBrace || c === closeBracket) depth--
  }
  return false
}

const joinPath = (base: string, rest: string): string =>
  base === '' || rest === '' || rest.startsWith('[') ? base + rest : `${base}.${rest}`

interface IssueLike {
  readonly path: readonly PropertyKey[]
  readonly code?: string | undefined
  readonly keys?: readonly string[] | undefined
  readonly errors?: readonly (readonly IssueLike[])[] | undefined
}

/** `players[2].handicap.index`: where a schema found its first fault, the extra key itself when there is one. */
export function pathOfIssue(issue: unknown): string {
  if (typeof issue !== 'object' || issue === null) return ''
  const { path, keys, errors } = issue as IssueLike
  const inner = errors?.length === 1 ? pathOfIssue(errors[0]?.[0]) : ''
  const extra = keys?.[0] === undefined ? [] : [keys[0]]
  return joinPath([...path, ...extra].reduce<string>(addStep, ''), inner)
}

const addStep = (base: string, step: PropertyKey): string =>
  typeof step === 'number' ? `${base}[${step}]` : joinPath(base, String(step))
