import { describe, expect, it } from 'vitest'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import { parseOutingFile } from '#shared/outing-file.ts'
import { settleOutputSchema } from '#shared/settle-output.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { autumnDay, outingOfPlain, plainWith, settledWith } from '#tests/kit/plain-outing.ts'

const faultsOf = (value: unknown): string[] => {
  const parsed = parseOutingFile(typeof value === 'string' ? value : JSON.stringify(value))
  return parsed.ok ? [] : parsed.error.map(({ path, code }) => `${path}: ${code}`)
}

const [first, ...others] = autumnDay.players
const [alderScores, ...otherScores] = autumnDay.scores
const withFirst = (change: object) => ({ players: [{ ...first, ...change }, ...others] })
const [group] = autumnDay.groups
const [match, points] = autumnDay.games

describe('a plain file', () => {
  it('is read as it is written', () => {
    const parsed = parseOutingFile(JSON.stringify(autumnDay))
    expect(parsed).toEqual({ ok: true, value: JSON.parse(JSON.stringify(autumnDay)) })
  })

  it.each<[object, string[]]>([
    [{ length: 12 }, ['length: wrong value']],
    [{ length: undefined }, ['length: missing']],
    [{ weather: 'rain' }, ['weather: unknown field']],
    [{ day: '2026-02-30' }, ['day: wrong value']],
    [withFirst({ handicap: { index: 'abc' } }), ['players[0].handicap.index: wrong value']],
    [withFirst({ handicap: { index: 12.44 } }), ['players[0].handicap.index: not in tenths']],
    [withFirst({ handicap: { courseHandicap: '14' } }), ['players[0].handicap.courseHandicap: wrong value']],
    [withFirst({ handicap: { strokes: 4.5 } }), ['players[0].handicap.strokes: wrong value']],
    [withFirst({ tee: 'red' }), ['players[0].tee: unknown tee']],
    [{ players: [...autumnDay.players, first] }, ['players[4].id: id twice']],
    [
      { balls: [{ id: 'alder', players: ['oak'] }, ...['birch', 'cedar', 'rowan'].map(id => ({ id, players: [id] }))] },
      ['balls[0].players[0]: unknown player'],
    ],
    [{ groups: [{ ...group, balls: [...(group?.balls ?? []), 'oak'] }] }, ['groups[0].balls[4]: unknown ball']],
    [{ groups: [group, { id: 'two', name: 'Two', balls: ['alder'] }] }, ['groups[1].balls[0]: ball in two groups']],
    [{ groups: [{ ...group, order: [[1, 1]] }] }, ['groups[0].order: wrong number of holes']],
    [
      {
        games: [
          {
            ...match,
            sides: [
              ['alder', 'oak'],
              ['birch', 'rowan'],
            ],
          },
          points,
        ],
      },
      ['games[0].sides[0][1]: unknown ball'],
    ],
    [{ games: [{ ...match, format: 'other' }, points] }, ['games[0].format: wrong value']],
    [{ games: [{ ...match, allowance: 101 }, points] }, ['games[0].allowance: wrong value']],
    [{ games: [{ ...match, group: 'two' }, points] }, ['games[0].group: unknown group']],
    [{ main: 'skins' }, ['main: unknown game']],
    [{ scores: [{ ...alderScores, ball: 'oak' }] }, ['scores[0].ball: unknown ball']],
    [{ scores: [{ ...alderScores, holes: [4, 5] }] }, ['scores[0].holes: wrong number of holes']],
    [{ scores: [{ ...alderScores, holes: [4, 5, 0, ...Array(15).fill(null)] }] }, ['scores[0].holes[2]: wrong value']],
    [{ scores: [alderScores, ...otherScores, alderScores] }, ['scores[4]: scores twice']],
    [{ scores: [{ ...alderScores, group: 'two' }] }, ['scores[0].group: unknown group']],
    [
      { course: { ...autumnDay.course, holes: autumnDay.course.holes.slice(0, 17) }, scores: [] },
      ['course.holes: wrong number of holes', 'course.tees[0].lengths.byHole: wrong number of holes'],
    ],
    [{ closed: ['oak'] }, ['closed[0]: unknown ball']],
  ])('names the field of a fault %#', (change, expected) => {
    expect(faultsOf({ ...autumnDay, ...change })).toEqual(expected)
  })

  it('names every fault of the shape at once', () => {
    expect(faultsOf({ ...autumnDay, length: 7, main: 5 })).toEqual(['length: wrong value', 'main: wrong value'])
  })

  it.each([
    ['{', ': not json'],
    ['[]', 'sixThrees: not an outing file'],
    ['null', ': not an outing file'],
    [JSON.stringify({ ...autumnDay, version: 2 }), 'version: newer version'],
    [JSON.stringify({ ...autumnDay, form: 'half' }), 'form: unknown form'],
    ['['.repeat(100_000), ': too large'],
  ])('is not taken for what it is not: %.20s', (text, fault) => {
    expect(faultsOf(text)).toEqual([fault])
  })

  it('comes back from its outing with the same results', () => {
    const closing = plainWith({
      closed: ['alder'],
      players: [{ ...first, handicap: { index: '+1.3' } }, ...others],
      course: {
        ...autumnDay.course,
        tees: [{ id: 'white', name: 'White', ratings: { courseRating: 71.4, slope: 128, par: 72 } }],
      },
      groups: [{ ...group, start: 10 }],
    })
    const again = plainOf(outingOfPlain(closing))
    expect(again === null ? 'no file' : settledWith({ ...again })).toEqual(settledWith({ ...closing }))
    expect(parseOutingFile(JSON.stringify(again)).ok).toBe(true)
  })
})

describe('a whole file', () => {
  const op = makeOp(
    [],
    'fir',
    factsOfPlain(plainWith()).map(fact => ({ ...fact, replaces: [] })),
  )
  const whole = (...ops: readonly unknown[]) => ({ sixThrees: 'outing', version: 1, form: 'whole', log: 'log', ops })

  it.each<[string, unknown, string[]]>([
    ['is read', whole(op), []],
    ['may hold an op twice', whole(op, op), []],
    ['may hold what is newer', whole({ ...op, facts: [{ key: 'weather', value: 'rain', replaces: [] }] }), []],
    ['of another log', whole({ ...op, log: 'other' }), ['ops[0].log: other log']],
    ['with one identity for two ops', whole(op, { ...op, act: 'other' }), ['ops[1]: op twice']],
    ['with a wrong number', whole({ ...op, n: 0 }), ['ops[0].n: wrong value']],
    ['without a field', whole({ ...op, tick: undefined }), ['ops[0].tick: missing']],
    ['with a field too many', whole({ ...op, seq: 1 }), ['ops[0].seq: unknown field']],
    [
      'with a wrong value',
      whole({ ...op, facts: [{ key: 'g/a/score/alder/1/1/card', value: 99, replaces: [] }] }),
      ['ops[0].facts[0].value: wrong value'],
    ],
    ['with a key twice', whole({ ...op, facts: [op.facts[0], op.facts[0]] }), ['ops[0].facts[1].key: key twice']],
  ])('%s', (_, file, expected) => {
    expect(faultsOf(file)).toEqual(expected)
  })
})

it('what settle prints is what its schema says', () => {
  const changes = [{}, { scores: [] }, { players: [{ id: 'alder', name: 'Alder' }, ...others] }, { closed: ['alder'] }]
  for (const change of changes) expect(settleOutputSchema.safeParse(settledWith(change)).error).toBeUndefined()
})

it('a game whose ties stand, or that lacks a method, is the same in the file made of it', () => {
  const bogey = { id: 'bogey', format: 'par-bogey', sides: points?.sides }
  const proposed = outingOfPlain(plainWith({ games: [bogey], main: undefined }))
  expect(proposed.games[0]?.methods.ties).toMatchObject({ method: 'points' })
  const standing = outingOfPlain(plainWith({ games: [{ ...bogey, ties: null, rounding: null }], main: undefined }))
  expect(standing.games[0]?.methods).toMatchObject({ ties: null, rounding: null })
  const again = plainOf(standing)
  expect(parseOutingFile(JSON.stringify(again))).toMatchObject({ ok: true })
  expect(again && outingOfPlain(again).games).toEqual(standing.games)
})
