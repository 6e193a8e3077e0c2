/** What may cross the wire: no undefined, no NaN, no dates. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

/**
 * The one text of a value (JSON Canonicalization Scheme, RFC 8785): keys sorted by UTF-16 code units, no spaces,
 * numbers and strings as ECMAScript writes them. Two values are the same exactly when their texts are.
 */
export function canonicalJson(value: Json): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value)
  let text = ''
  if (isList(value)) {
    for (const item of value) text += `${text && ','}${canonicalJson(item)}`
    return `[${text}]`
  }
  for (const key of Object.keys(value).sort()) {
    text += `${text && ','}${JSON.stringify(key)}:${canonicalJson(value[key] ?? null)}`
  }
  return `{${text}}`
}

const isList = (value: Json): value is readonly Json[] => Array.isArray(value)
