import { describe, expect, it } from 'vitest'
import { createHistory } from './history.ts'

const act = (n: number, device = 'alder'): string => JSON.stringify({ device, n, act: `${device} ${n}` })
const stored = (sent: readonly string[]): object => ({ verdicts: sent.map((_, seq) => ({ kind: 'stored', seq })) })

function historyOf(sent: readonly string[]) {
  const history = createHistory()
  history.answered(sent, stored(sent))
  return history
}

describe('the history that watches over the faults', () => {
  it('is content with what was acknowledged, once and in order', () => {
    const history = historyOf([act(1), act(2)])
    history.compare(
      [
        [1, act(1)],
        [2, act(1, 'birch')],
        [3, act(2)],
      ],
      history.whatIsSaid(),
    )
    expect(history.counts).toEqual({ lost: 0, duplicated: 0, falseMarks: 0, words: [] })
  })

  it('sees an act that was acknowledged and is not there, or is there with other content', () => {
    const history = historyOf([act(1), act(2)])
    history.compare([[1, act(1).replace('alder 1', 'other')]], history.whatIsSaid())
    expect(history.counts).toMatchObject({ lost: 2, words: ['lost: alder.1', 'lost: alder.2'] })
  })

  it('sees an act that stands twice, and one out of its order', () => {
    const history = historyOf([])
    history.compare(
      [
        [1, act(1)],
        [2, act(3)],
        [3, act(1)],
        [4, act(2)],
      ],
      history.whatIsSaid(),
    )
    expect(history.counts.words).toEqual(['duplicated: alder.1 stands twice', 'duplicated: alder.2 stands after 3'])
  })

  it('sees a phone that says of an act that the server has it, where it has not', () => {
    const history = historyOf([])
    history.compare([[1, act(1)]], { stored: [], phones: new Map([['birch', [act(1), act(2)]]]) })
    expect(history.counts).toMatchObject({ falseMarks: 1, words: ['falseMarks: birch says alder.2 is on the server'] })
  })
})
