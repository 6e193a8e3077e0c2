import type { Json } from '#core/values/json.ts'

/**
 * The value at a path: `games[id=points].lines[side=a].holes[*].value`. `[3]` is a place from 0, `[*]` every item,
 * `[0..9]` a run of items, `[name=value]` the item whose field reads so; a list of ids reads joined by commas.
 */
export function valueAt(json: Json, path: string): Json {
  const steps = path.match(/[^.[\]]+|\[[^\]]*\]/g)
  if (steps === null) throw new Error(`no path: ${path}`)
  return follow(json, steps, path)
}

function follow(json: Json, [step, ...rest]: readonly string[], path: string): Json {
  if (step === undefined) return json
  if (step === '[*]') return listOf(json, path).map(item => follow(item, rest, path))
  const run = /^\[(\d+)\.\.(\d+)\]$/.exec(step)
  if (run)
    return listOf(json, path)
      .slice(Number(run[1]), Number(run[2]))
      .map(item => follow(item, rest, path))
  return follow(itemAt(json, step, path), rest, path)
}

function itemAt(json: Json, step: string, path: string): Json {
  const [, name = '', value = ''] = /^\[([^=]+)=(.*)\]$/.exec(step) ?? []
  const place = /^\[(\d+)\]$/.exec(step)
  const found = place
    ? listOf(json, path)[Number(place[1])]
    : name === ''
      ? fieldOf(json, step)
      : listOf(json, path).find(item => textOf(fieldOf(item, name)) === value)
  if (found === undefined) throw new Error(`nothing at ${step} of ${path}`)
  return found
}

const fieldOf = (json: Json | undefined, name: string): Json | undefined =>
  typeof json === 'object' && json !== null && !Array.isArray(json)
    ? (json as Readonly<Record<string, Json>>)[name]
    : undefined

const textOf = (json: Json | undefined): string => (Array.isArray(json) ? json.join(',') : String(json))

function listOf(json: Json, path: string): readonly Json[] {
  if (!Array.isArray(json)) throw new Error(`no list in ${path}`)
  return json
}
