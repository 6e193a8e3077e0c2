import type { Json } from '#core/values/json.ts'

/** As much of a JSON Schema as the wire contract's are made of. */
export interface JsonSchema {
  readonly $ref?: string
  readonly type?: string
  readonly const?: Json
  readonly enum?: readonly Json[]
  readonly anyOf?: readonly JsonSchema[]
  readonly oneOf?: readonly JsonSchema[]
  readonly properties?: Readonly<Record<string, JsonSchema>>
  readonly required?: readonly string[]
  readonly items?: JsonSchema | false
  readonly prefixItems?: readonly JsonSchema[]
  readonly minItems?: number
  readonly maxItems?: number
  readonly minLength?: number
  readonly maxLength?: number
  readonly pattern?: string
  readonly minimum?: number
  readonly maximum?: number
}

/** One wrong version of a valid value. */
export interface Mutant {
  /** What was done, and to which field: `n: below the smallest`. */
  readonly name: string
  readonly value: Json
  /** The field that an answer must name. */
  readonly path: string
}

type Path = readonly (string | number)[]

interface Wrong {
  readonly what: string
  readonly value: Json
  /** Below the field itself: the key that is missing or too many. */
  readonly below?: string
}

const formatPath = (path: Path): string =>
  path.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : text ? `${text}.${step}` : step),
    '',
  )

/** Every way in which one field of a valid value can be wrong: missing, extra, out of range, wrong type, huge, deep. */
export function mutantsOf(schema: JsonSchema, valid: Json): Mutant[] {
  return fieldsOf(schema, valid, []).flatMap(({ schema: field, value, path }) =>
    wrongsOf(field, value).map(({ what, value: wrong, below }) => {
      const named = formatPath(below === undefined ? path : [...path, below])
      return { name: `${named || 'the whole'}: ${what}`, value: put(valid, path, wrong), path: named }
    }),
  )
}

interface Field {
  readonly schema: JsonSchema
  readonly value: Json
  readonly path: Path
}

function fieldsOf(schema: JsonSchema, value: Json, path: Path): Field[] {
  const inner = branchOf(schema, value)
  const own = [{ schema, value, path }]
  if (isRecord(value) && inner.properties) {
    const entries = Object.entries(inner.properties).filter(([key]) => key in value)
    return [...own, ...entries.flatMap(([key, field]) => fieldsOf(field, value[key] ?? null, [...path, key]))]
  }
  if (isList(value) && (inner.prefixItems || inner.items)) {
    const schemaAt = (index: number) => inner.prefixItems?.[index] ?? (inner.items || {})
    return [...own, ...value.flatMap((item, index) => fieldsOf(schemaAt(index), item, [...path, index]))]
  }
  return own
}

const branches = ({ anyOf, oneOf }: JsonSchema): readonly JsonSchema[] | undefined => anyOf ?? oneOf

/** Of alternatives the one that the value is an example of. */
function branchOf(schema: JsonSchema, value: Json): JsonSchema {
  const found = branches(schema)?.find(branch => typeOf(value, branch) && constsFit(branch, value))
  return found ? branchOf(found, value) : schema
}

const constsFit = ({ properties }: JsonSchema, value: Json): boolean =>
  !isRecord(value) ||
  Object.entries(properties ?? {}).every(([key, field]) => field.const === undefined || field.const === value[key])

function typeOf(value: Json, { type }: JsonSchema): boolean {
  if (type === 'integer') return Number.isInteger(value)
  if (type === 'null') return value === null
  if (type === 'array') return isList(value)
  if (type === 'object') return isRecord(value)
  return type === typeof value
}

const isAny = (schema: JsonSchema): boolean => schema.$ref !== undefined

function wrongsOf(schema: JsonSchema, value: Json): Wrong[] {
  if (isAny(schema)) return []
  const inner = branchOf(schema, value)
  const types = (branches(schema) ?? [schema]).map(branch => branch.type ?? typeof branch.const)
  return [
    ...wrongTypes(types),
    ...(inner.enum || inner.const !== undefined
      ? [{ what: 'none of the list', value: typeof value === 'string' ? 'zzz' : -99 }]
      : []),
    ...wrongNumbers(inner, value),
    ...wrongTexts(inner, value),
    ...wrongLists(inner, value),
    ...wrongRecords(inner, value),
  ]
}

/** A value of each type that the field does not take. */
function wrongTypes(types: readonly string[]): Wrong[] {
  const isNumber = types.includes('integer') || types.includes('number')
  const deep = nested(2_000)
  const others: readonly (readonly [string, Json])[] = [
    ['null', null],
    ['boolean', true],
    ['string', 'no'],
    ['number', 0.5],
    ['array', [[]]],
    ['object', { toString: 1 }],
  ]
  const wrong = others.filter(([type]) => !types.includes(type) && !(type === 'number' && isNumber))
  const values = wrong.map(([type, value]) => ({ what: `wrong type (${type})`, value }))
  return types.includes('array') ? values : [...values, { what: 'deep', value: deep }]
}

function nested(depth: number): Json {
  let value: Json = 1
  for (let i = 0; i < depth; i++) value = [value]
  return value
}

function wrongNumbers({ type, minimum, maximum }: JsonSchema, value: Json): Wrong[] {
  if (typeof value !== 'number') return []
  return [
    ...(type === 'integer' ? [{ what: 'a fraction', value: value + 0.5 }] : []),
    ...(type === 'integer' ? [{ what: 'huge', value: 1e300 }] : []),
    ...(minimum === undefined ? [] : [{ what: 'below the smallest', value: minimum - 1 }]),
    ...(maximum === undefined || maximum >= Number.MAX_SAFE_INTEGER
      ? []
      : [{ what: 'above the largest', value: maximum + 1 }]),
  ]
}

function wrongTexts({ maxLength, pattern }: JsonSchema, value: Json): Wrong[] {
  if (typeof value !== 'string') return []
  return [
    ...(maxLength === undefined ? [] : [{ what: 'too long', value: 'a'.repeat(maxLength + 1) }]),
    ...(maxLength === undefined && pattern === undefined ? [] : [{ what: 'huge', value: `${'a'.repeat(200_000)}!` }]),
    ...(pattern === undefined
      ? []
      : ['', '\u0000', ' \u202e'].map(text => ({ what: `of no such form (${JSON.stringify(text)})`, value: text }))),
  ]
}

function wrongLists({ items, prefixItems, minItems, maxItems }: JsonSchema, value: Json): Wrong[] {
  if (!isList(value)) return []
  const [first = null] = value
  if (prefixItems && items === false)
    return [
      { what: 'too many', value: [...value, first] },
      { what: 'too few', value: value.slice(1) },
    ]
  return [
    ...(minItems ? [{ what: 'too few', value: value.slice(0, minItems - 1) }] : []),
    ...(maxItems === undefined ? [] : [{ what: 'too many', value: Array.from({ length: maxItems + 1 }, () => first) }]),
  ]
}

function wrongRecords({ properties, required = [] }: JsonSchema, value: Json): Wrong[] {
  if (!isRecord(value) || !properties) return []
  const without = (key: string) => Object.fromEntries(Object.entries(value).filter(([other]) => other !== key))
  return [
    ...required.map(key => ({ what: 'missing', value: without(key), below: key })),
    ...['extra', '__proto__', 'constructor'].map(key => ({
      what: 'extra',
      value: Object.fromEntries([...Object.entries(value), [key, { polluted: true }]]),
      below: key,
    })),
  ]
}

/** The value with another one in the place of a path; keys as they are, `__proto__` too. */
function put(value: Json, path: Path, wrong: Json): Json {
  const [step, ...rest] = path
  if (step === undefined) return wrong
  if (isList(value)) return value.map((item, index) => (index === step ? put(item, rest, wrong) : item))
  if (!isRecord(value)) throw new Error('the path leads nowhere')
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [key, key === step ? put(item, rest, wrong) : item]),
  )
}

const isList = (value: Json): value is readonly Json[] => Array.isArray(value)
const isRecord = (value: Json): value is { readonly [key: string]: Json } =>
  typeof value === 'object' && value !== null && !isList(value)
