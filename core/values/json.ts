/** What may cross the wire: no undefined, no NaN, no dates. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

/**
 * The one text of a value (JSON Canonicalization Scheme, RFC 8785): keys sorted by UTF-16 code units, no spaces,
 * numbers and strings as ECMAScript writes them. Two values are the same exactly when their texts are.
 */
export function canonicalJson(value: Json): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value)
  if (isList(value)) return `[${value.map(canonicalJson).join(',')}]`
  const members = Object.keys(value)
    .sort()
    .map(key => `${JSON.stringify(key)}:${canonicalJson(value[key] ?? null)}`)
  return `{${members.join(',')}}`
}

const isList = (value: Json): value is readonly Json[] => Array.isArray(value)
