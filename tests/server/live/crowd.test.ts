import { describe, expect, it } from 'vitest'
import { defaultLimits } from '#server/live/limiter.ts'
import { connect, headersOf, type RunningApp, startApp } from '#tests/server/support/app.ts'
import { inviteFact, makeInvite, makePhone, type Phone } from '#tests/server/support/phone.ts'

const scorer = makeInvite('s', 'scorer', 'a')

async function startField() {
  const app = await startApp({ limits: defaultLimits })
  const alder = makePhone('alder')
  const line = await connect(app.url, alder)
  await line.ask('push', { ops: [alder.op([alder.keyFact('desk'), inviteFact(scorer)])] })
  return { app, line }
}

const json = { 'content-type': 'application/json' }
const logUrl = ({ url }: RunningApp, what: string) => `${url}/api/logs/quillmoor/${what}`
const answerOf = async (answer: Promise<Response>): Promise<unknown> => (await answer).json()

/** Another secret each time, in the place of a key, of an invite, or of the three words. */
function guessesOf(app: RunningApp): readonly (readonly [what: string, guess: (n: number) => Promise<unknown>])[] {
  const guesser = (n: number): Phone => makePhone(`guess-${n}`, { ...scorer, secret: `guess-${n}`.padEnd(24, '-') })
  const keyGuesser = (n: number) => {
    const { hello } = makePhone('alder')
    return { authorization: `Bearer ${hello.device}:${`guess-${n}`.padEnd(24, '-')}` }
  }
  const push = (phone: Phone) =>
    answerOf(
      fetch(logUrl(app, 'ops'), {
        method: 'POST',
        headers: { ...headersOf(phone), ...json },
        body: JSON.stringify({ ops: [phone.op([phone.keyFact('scorer', 'a')])] }),
      }),
    )
  return [
    [
      'an invite, by reading',
      n => answerOf(fetch(logUrl(app, 'ops?feed=all&after=0'), { headers: headersOf(guesser(n)) })),
    ],
    ['an invite, by joining', n => push(guesser(n))],
    ['an invite, by the board', n => answerOf(fetch(logUrl(app, 'snapshot'), { headers: headersOf(guesser(n)) }))],
    ['a key, by reading', n => answerOf(fetch(logUrl(app, 'ops?feed=all&after=0'), { headers: keyGuesser(n) }))],
    ['a key, by the board', n => answerOf(fetch(logUrl(app, 'snapshot'), { headers: keyGuesser(n) }))],
    [
      'a key, over a socket',
      async n => {
        const phone = makePhone('alder')
        const line = await connect(app.url, { ...phone, hello: { ...phone.hello, key: `guess-${n}`.padEnd(24, '-') } })
        const answer = await line.ask('pull', { feed: 'all', after: 0 })
        line.socket.close()
        return answer
      },
    ],
    [
      'three words',
      n => {
        const body = JSON.stringify({ words: `wrong guess ${n}`, name: 'Guesser' })
        return answerOf(fetch(`${app.url}/api/ask`, { method: 'POST', headers: json, body }))
      },
    ],
  ]
}

const isNothing = (answer: unknown): boolean =>
  /"(key unknown|words unknown|busy|too many)"/.test(JSON.stringify(answer))
const isHeld = (answer: unknown): boolean => /"(busy|too many)"/.test(JSON.stringify(answer))

async function joinField(app: RunningApp, count: number): Promise<unknown[]> {
  const join = async (n: number): Promise<unknown> => {
    const phone = makePhone(`phone-${n}`, scorer)
    const line = await connect(app.url, phone)
    const joined = await line.ask('push', { ops: [phone.op([phone.keyFact('scorer', 'a')])] })
    const followed = (await line.ask('follow', { era: null, feeds: [{ feed: 'g/a', after: 0 }] })) as { kind: string }
    return [joined, followed.kind]
  }
  return Promise.all(Array.from({ length: count }, (_, n) => join(n)))
}

describe('a guesser behind the address of a whole field', () => {
  it('is held in every way, and two hundred phones join within the minute all the same', async () => {
    const { app, line } = await startField()
    const startedAt = performance.now()
    const guesses = guessesOf(app)
    const rounds = 130
    const heard = new Map(guesses.map(([what]) => [what, [] as unknown[]]))
    const guessing = (async () => {
      for (let n = 0; n < rounds; n++) {
        await Promise.all(guesses.map(async ([what, guess]) => heard.get(what)?.push(await guess(n))))
      }
      // What is left of the words, which have a count of their own.
      for (let n = rounds; n < defaultLimits.wrongWordsPerMinute + 10; n++)
        heard.get('three words')?.push(await guesses.at(-1)?.[1](n))
    })()
    const joined = await joinField(app, 200)
    await guessing
    expect(performance.now() - startedAt).toBeLessThan(60_000)
    const served = [{ verdicts: [expect.objectContaining({ kind: 'stored' })] }, 'followed']
    expect(joined).toEqual(Array.from({ length: 200 }, () => served))
    for (const [what, answers] of heard) {
      expect([what, answers.filter(answer => !isNothing(answer))]).toEqual([what, []])
      expect([what, isHeld(answers.at(-1))]).toEqual([what, true])
    }
    expect(await line.ask('pull', { feed: 'all', after: 201 })).toMatchObject({ kind: 'pulled', part: { ops: [] } })
    // A phone that joins after the guesser was held, as well.
    const late = makePhone('larch', scorer)
    const lateLine = await connect(app.url, late)
    expect(await lateLine.ask('push', { ops: [late.op([late.keyFact('scorer', 'a')])] })).toMatchObject({
      verdicts: [{ kind: 'stored' }],
    })
  })

  it('shuts the three words for itself alone, right ones among them', async () => {
    const app = await startApp({ limits: { ...defaultLimits, wrongWordsPerMinute: 3 } })
    const alder = makePhone('alder')
    const line = await connect(app.url, alder)
    await line.ask('push', { ops: [alder.op([alder.keyFact('desk'), inviteFact(scorer)])] })
    const { spoken } = (await line.ask('words', { group: 'a' })) as { spoken: { words: string[] } }
    const ask = (words: string) =>
      answerOf(
        fetch(`${app.url}/api/ask`, { method: 'POST', headers: json, body: JSON.stringify({ words, name: 'Maple' }) }),
      )
    for (let n = 0; n < 4; n++) await ask(`wrong guess ${n}`)
    const said = spoken.words.join(' ')
    expect(await ask(said)).toEqual({ kind: 'not asking', why: 'too many' })
  })
})
