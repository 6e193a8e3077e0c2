import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { type FactKind, roles } from '#core/outing/facts.ts'
import { factKinds } from '#core/outing/keys.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'
import { type AskEvent, askSchemas } from '#server/live/asking.ts'
import { type UpEvent, upSchemas } from '#server/live/dispatch.ts'
import { factSchemas } from '#shared/facts.ts'
import { limits } from '#shared/limits.ts'
import { helloSchema } from '#shared/messages/hello.ts'
import { isTooDeep, opSchema, parseOp } from '#shared/op.ts'
import { connect, headersOf, openLine, startApp } from '#tests/server/support/app.ts'
import { fact, inviteFact, makeInvite, makePhone, type Phone, score } from '#tests/server/support/phone.ts'
import { openContent } from './content.ts'
import { askExamples, factExamples, messageExamples } from './examples.ts'
import { type JsonSchema, mutantsOf } from './mutants.ts'

const schemaOf = (schema: z.ZodMiniType): JsonSchema => z.toJSONSchema(schema, { io: 'input' }) as JsonSchema

const invite = makeInvite('d', 'desk')

/** A round with a score in it, and what proves that nothing of it has changed. */
async function startRound() {
  const app = await startApp()
  const alder = makePhone('alder')
  const line = await connect(app.url, alder)
  const start = alder.op([alder.keyFact('desk'), inviteFact(invite)])
  await line.ask('push', { ops: [start, alder.op([score('a', 4)])] })
  const contentOf = await openContent(app.dataFolder)
  const before = contentOf()
  return { app, alder, line, unchanged: () => expect(contentOf()).toBe(before) }
}

const opOf = (phone: Phone, key: string, value: Json): Json => JSON.parse(phone.op([fact(key, value)], { n: 99 }))

describe('the examples', () => {
  it('stand for every message, and each is valid', () => {
    expect(Object.keys(messageExamples).sort()).toEqual(Object.keys(upSchemas).sort())
    for (const [event, example] of Object.entries(messageExamples)) {
      expect([event, upSchemas[event as UpEvent].safeParse(example).success]).toEqual([event, true])
    }
    expect(Object.keys(askExamples).sort()).toEqual(Object.keys(askSchemas).sort())
    for (const [event, example] of Object.entries(askExamples)) {
      expect([event, askSchemas[event as AskEvent].safeParse(example).success]).toEqual([event, true])
    }
  })

  it.each(factKinds)('stand for every kind of fact, and each is valid: %s', kind => {
    const { key, values } = factExamples[kind]
    expect(values.length).toBeGreaterThan(0)
    const alder = makePhone('alder')
    for (const value of values) expect(parseOp(alder.op([fact(key, value)]))).toMatchObject({ ok: true })
  })

  it('make mutants of every sort', () => {
    const all = Object.entries(messageExamples).flatMap(([event, example]) =>
      mutantsOf(schemaOf(upSchemas[event as UpEvent]), example),
    )
    const sorts = new Set(all.map(({ name }) => name.replace(/^.*?: /, '').replace(/ \(.*/, '')))
    for (const sort of ['missing', 'extra', 'below the smallest', 'wrong type', 'huge', 'deep'])
      expect(sorts).toContain(sort)
  })
})

describe('a wrong message', () => {
  it.each(Object.keys(messageExamples) as UpEvent[])(
    'is answered by the name of its field and changes nothing: %s',
    async event => {
      const { line, unchanged } = await startRound()
      const mutants = mutantsOf(schemaOf(upSchemas[event]), messageExamples[event])
      for (const { name, value, path } of mutants) {
        expect([name, await line.ask(event, value)]).toEqual([name, { kind: 'fault', code: 'wrong shape', path }])
        unchanged()
      }
      expect(({} as { polluted?: unknown }).polluted).toBeUndefined()
    },
  )

  it.each([
    ['push', 'ops'],
    ['exchange', 'exchange'],
    ['words', 'words'],
    ['admit', 'admit'],
  ] as const)('is answered so by HTTP as well: %s', async (event, place) => {
    const { app, alder, unchanged } = await startRound()
    for (const { name, value, path } of mutantsOf(schemaOf(upSchemas[event]), messageExamples[event])) {
      const body = JSON.stringify(value)
      const headers = { ...headersOf(alder), 'content-type': 'application/json' }
      const answer = await fetch(`${app.url}/api/logs/quillmoor/${place}`, { method: 'POST', headers, body })
      const { kind, path: named } = (await answer.json()) as { kind: string; path: string }
      // A body that is neither a list nor an object is no JSON to the reader of bodies.
      const isBody = typeof value === 'object' && value !== null
      expect([name, answer.status, kind, named]).toEqual([name, 400, 'fault', isBody ? path : ''])
      unchanged()
    }
  })

  it.each(Object.keys(askSchemas) as AskEvent[])('is answered so to a phone that is in nowhere: %s', async event => {
    const { app, unchanged } = await startRound()
    for (const { name, value, path } of mutantsOf(schemaOf(askSchemas[event]), askExamples[event])) {
      const headers = { 'content-type': 'application/json' }
      const answer = await fetch(`${app.url}/api/${event}`, { method: 'POST', headers, body: JSON.stringify(value) })
      const { kind, path: named } = (await answer.json()) as { kind: string; path: string }
      const isBody = typeof value === 'object' && value !== null
      expect([name, answer.status, kind, named]).toEqual([name, 400, 'fault', isBody ? path : ''])
      unchanged()
    }
  })

  it('opens no socket: hello', async () => {
    const { app, unchanged } = await startRound()
    const hello: Json = JSON.parse(JSON.stringify(makePhone('birch', invite).hello))
    // What is no object at all is stopped by the transport itself.
    const isHello = (value: Json) => typeof value === 'object' && value !== null && !Array.isArray(value)
    const mutants = mutantsOf(schemaOf(helloSchema), hello).filter(({ value }) => isHello(value))
    for (const { name, value, path } of mutants) {
      const { socket } = openLine(app.url, value)
      const refusal = await new Promise(resolve => {
        socket.once('connect', () => resolve('connected'))
        socket.once('connect_error', error => resolve((error as { data?: unknown }).data))
      })
      socket.close()
      expect([name, refusal]).toEqual([name, { kind: 'fault', code: 'wrong shape', path }])
    }
    unchanged()
  })
})

describe('a wrong op', () => {
  /** What a push of the text is answered with, by the first bound that it breaks. */
  const answerOf = (text: string, code: string, path: string) => {
    if (text.length > limits.opLength) return { kind: 'fault', code: 'wrong shape', path: 'ops[0]' }
    const [refusal, named] = isTooDeep(text) ? ['too large', ''] : [code, path]
    return { verdicts: [{ kind: 'refused', code: refusal, path: named }] }
  }

  it('is refused by the name of its field and changes nothing', async () => {
    const { line, alder, unchanged } = await startRound()
    const valid = opOf(alder, 'title', 'Quillmoor')
    for (const { name, value, path } of mutantsOf(schemaOf(opSchema), valid)) {
      const text = canonicalJson(value)
      expect([name, await line.ask('push', { ops: [text] })]).toEqual([name, answerOf(text, 'wrong shape', path)])
      unchanged()
    }
  })

  it.each(factKinds)('is refused by the field of the fact that is wrong: %s', async (kind: FactKind) => {
    const { line, alder, unchanged } = await startRound()
    const { key, values } = factExamples[kind]
    for (const valid of values) {
      for (const { name, value, path } of mutantsOf(schemaOf(factSchemas[kind]), valid)) {
        // Null withdraws the fact: it is no wrong value.
        if (value === null) continue
        const text = canonicalJson(opOf(alder, key, value))
        const field = path === '' || path.startsWith('[') ? `facts[0].value${path}` : `facts[0].value.${path}`
        // The reader of any JSON leaves this key out, and the text is then not the value's own.
        const [code, named] = path.endsWith('__proto__')
          ? (['not canonical', ''] as const)
          : (['wrong value', field] as const)
        expect([name, await line.ask('push', { ops: [text] })]).toEqual([name, answerOf(text, code, named)])
        unchanged()
      }
    }
  })

  it('is found at once, however large or deep its text', async () => {
    const { line, unchanged, app, alder } = await startRound()
    const texts = [
      '['.repeat(50_000),
      '{"a":'.repeat(15_000),
      `"${'a'.repeat(99_000)}`,
      '\\'.repeat(99_999),
      '-'.repeat(99_999),
    ]
    const startedAt = performance.now()
    const { verdicts } = (await line.ask('push', { ops: texts })) as { verdicts: { kind: string }[] }
    expect(performance.now() - startedAt).toBeLessThan(500)
    expect(verdicts.map(({ kind }) => kind)).toEqual(texts.map(() => 'refused'))
    const body = `{"ops":${'['.repeat(10_000)}${']'.repeat(10_000)}}`
    const answer = await fetch(`${app.url}/api/logs/quillmoor/ops`, { method: 'POST', headers: headersOf(alder), body })
    expect(answer.status).toBe(400)
    unchanged()
  })
})

describe('what a role may not write', () => {
  it.each(roles.filter(role => role !== 'desk' && role !== 'owner'))(
    'changes nothing when a %s writes it',
    async role => {
      const { app, line, alder } = await startRound()
      const own = makeInvite('own', role, role === 'scorer' ? 'b' : null)
      const rowan = makePhone('rowan', own)
      await line.ask('push', { ops: [alder.op([inviteFact(own)])] })
      const other = await connect(app.url, rowan)
      await other.ask('push', { ops: [rowan.op([rowan.keyFact(role, own.group)])] })
      const contentOf = await openContent(app.dataFolder)
      const before = contentOf()
      for (const kind of factKinds) {
        const { key, values } = factExamples[kind]
        const text = rowan.op([fact(key, values[0] ?? null)])
        const refused = { kind: 'refused', code: 'forbidden', path: 'facts[0].key' }
        expect([kind, await other.ask('push', { ops: [text] })]).toEqual([kind, { verdicts: [refused] }])
        expect(contentOf()).toBe(before)
      }
    },
  )
})
