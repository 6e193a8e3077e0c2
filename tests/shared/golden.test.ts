import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { courseFileSchema } from '#shared/course-file.ts'
import { factSchemas } from '#shared/facts.ts'
import * as admit from '#shared/messages/admit.ts'
import * as ask from '#shared/messages/ask.ts'
import * as askers from '#shared/messages/askers.ts'
import * as deleting from '#shared/messages/delete.ts'
import * as exchange from '#shared/messages/exchange.ts'
import * as fault from '#shared/messages/fault.ts'
import * as feed from '#shared/messages/feed.ts'
import * as follow from '#shared/messages/follow.ts'
import * as hello from '#shared/messages/hello.ts'
import * as offers from '#shared/messages/offers.ts'
import * as pull from '#shared/messages/pull.ts'
import * as push from '#shared/messages/push.ts'
import * as snapshot from '#shared/messages/snapshot.ts'
import * as tell from '#shared/messages/tell.ts'
import * as verdict from '#shared/messages/verdict.ts'
import * as words from '#shared/messages/words.ts'
import { opSchema } from '#shared/op.ts'
import { plainOutingSchema } from '#shared/plain-outing.ts'
import { playerFactSchemas } from '#shared/player-facts.ts'
import { settleOutputSchema } from '#shared/settle-output.ts'
import { wholeOutingSchema } from '#shared/whole-outing.ts'

const folder = fileURLToPath(new URL('golden/', import.meta.url))
const isUpdating = process.env.UPDATE_GOLDEN === '1'

const schemasIn = (module: Readonly<Record<string, unknown>>): Record<string, z.core.$ZodType> =>
  Object.fromEntries(
    Object.entries(module).flatMap(([name, value]) => (value instanceof z.core.$ZodType ? [[name, value]] : [])),
  )

const wire: Readonly<Record<string, Readonly<Record<string, z.core.$ZodType>>>> = {
  admit: schemasIn(admit),
  ask: schemasIn(ask),
  askers: schemasIn(askers),
  delete: schemasIn(deleting),
  exchange: schemasIn(exchange),
  fault: schemasIn(fault),
  feed: schemasIn(feed),
  follow: schemasIn(follow),
  hello: schemasIn(hello),
  offers: schemasIn(offers),
  pull: schemasIn(pull),
  push: schemasIn(push),
  snapshot: schemasIn(snapshot),
  tell: schemasIn(tell),
  verdict: schemasIn(verdict),
  words: schemasIn(words),
  op: { opSchema },
  facts: factSchemas,
  'player-facts': playerFactSchemas,
}

const files = {
  'course-file': { course: courseFileSchema },
  'outing-file': { plain: plainOutingSchema, whole: wholeOutingSchema },
  'settle-output': { settleOutput: settleOutputSchema },
}

const jsonSchemas = (schemas: Readonly<Record<string, z.core.$ZodType>>): string => {
  const written = Object.entries(schemas).map(([name, schema]) => [name, z.toJSONSchema(schema)])
  return `${JSON.stringify(Object.fromEntries(written), null, 2)}\n`
}

function goldenOf(name: string, text: string): string | null {
  const path = `${folder}${name}.golden.json`
  if (isUpdating) {
    mkdirSync(folder, { recursive: true })
    writeFileSync(path, text)
  }
  return existsSync(path) ? readFileSync(path, 'utf8') : null
}

describe('the wire contract is the one written down', () => {
  it.each(Object.entries(wire))('%s', (name, schemas) => {
    const text = jsonSchemas(schemas)
    expect(Object.keys(schemas)).not.toHaveLength(0)
    expect(
      goldenOf(name, text) === text,
      `${name}: the wire changed. Bump protocolVersion in shared/protocol.ts with a history line, ` +
        'then run this test again with UPDATE_GOLDEN=1.',
    ).toBe(true)
  })

  it('every file of messages is in it', () => {
    const found = Object.keys(import.meta.glob('/shared/messages/*.ts')).map(path => path.split('/').at(-1))
    expect(found.sort()).toEqual(
      Object.keys(wire)
        .filter(name => !['op', 'facts', 'player-facts'].includes(name))
        .map(name => `${name}.ts`)
        .sort(),
    )
  })
})

describe('the files are the ones written down', () => {
  it.each(Object.entries(files))('%s', (name, schemas) => {
    const text = jsonSchemas(schemas)
    expect(
      goldenOf(name, text) === text,
      `${name}: the format changed. An outing file of another shape is a new version; the settle output is only ever ` +
        'added to. Bump protocolVersion in shared/protocol.ts with a history line, then run with UPDATE_GOLDEN=1.',
    ).toBe(true)
  })
})
