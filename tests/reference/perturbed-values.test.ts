import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { isExpected, isRecord, printAnswer } from '#scripts/check-values/answer.ts'
import { parseCheckFile } from '#scripts/check-values/check-value.ts'
import { type PlainInput, plainAnswers } from './plain-answers.ts'
import { answerOf } from './published-ops.ts'

/** Fields that one step is put on: a tenth of an Index or a differential, one of the others. */
const steps: Readonly<Record<string, number>> = {
  handicap_index: 1,
  slope: 10,
  slope9: 10,
  adjusted_gross: 10,
  playing_handicap: 10,
  gross: 10,
  differentials_newest_first: 1,
  course_handicaps_unrounded: 1,
}

/** Decimals of the file moved by tenths, without leaving the decimals. */
function moved(written: number | string, tenths: number): number | string {
  const [, decimals = ''] = String(written).split('.')
  const places = Math.max(1, decimals.length)
  const value = (Math.round(Number(written) * 10 ** places) + tenths * 10 ** (places - 1)) / 10 ** places
  return typeof written === 'string' ? value.toFixed(places) : value
}

/** The input once for each step up and down of each field that has one, in lists and records too. */
function perturbed(input: PlainInput): PlainInput[] {
  return Object.entries(input).flatMap(([key, value]) => {
    const step = steps[key]
    if (step !== undefined)
      return [step, -step].flatMap(by => perturbedValues(value, by).map(each => ({ ...input, [key]: each })))
    return isRecord(value) ? perturbed(value).map(each => ({ ...input, [key]: each })) : []
  })
}

function perturbedValues(value: unknown, tenths: number): unknown[] {
  if (Array.isArray(value)) {
    return value.flatMap((each, at) => perturbedValues(each, tenths).map(other => value.with(at, other)))
  }
  return typeof value === 'number' || typeof value === 'string' ? [moved(value, tenths)] : []
}

const file = fileURLToPath(new URL('standards-vectors.json', import.meta.url))
const parsed = parseCheckFile(readFileSync(file, 'utf8'))
const values = parsed.ok ? parsed.value : []

/** A gross score of nothing is not a score. */
const isPlayable = (input: PlainInput): boolean => input.gross !== 0

const cases = values
  .filter(({ op }) => Object.hasOwn(plainAnswers, op))
  .flatMap(({ id, op, input }) =>
    perturbed(input)
      .filter(isPlayable)
      .map(each => ({ id, op, input: each })),
  )

describe('published values, perturbed', () => {
  it('are 200 and more, of every calculation that the plain computation has', () => {
    console.info(`published values, perturbed: ${cases.length} inputs`)
    expect(cases.length).toBeGreaterThanOrEqual(200)
    expect(new Set(cases.map(({ op }) => op))).toEqual(new Set(Object.keys(plainAnswers)))
  })

  it.each(Object.keys(plainAnswers))('agree with the plain computation: %s', op => {
    for (const { id, input } of cases.filter(each => each.op === op)) {
      const answer = answerOf(op, input)
      const expected = plainAnswers[op]?.(input)
      const label = `${id} with ${JSON.stringify(input)}`
      if (!answer?.ok) throw new Error(`no answer to ${label}`)
      expect(isExpected(answer.value, expected), `${label} gives ${JSON.stringify(printAnswer(answer.value))}`).toBe(
        true,
      )
    }
  })

  it('agree unperturbed too, and with what is published', () => {
    const covered = values.filter(({ op }) => Object.hasOwn(plainAnswers, op))
    for (const { id, op, input, expected } of covered) expect(plainAnswers[op]?.(input), id).toMatchObject(expected)
    expect(covered.length).toBeGreaterThan(100)
  })
})
