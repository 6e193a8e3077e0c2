// Runs in every page of `bench cold` before anything of the page's own.
import { whenPainted } from './painted.ts'

export interface ColdPage {
  /** From now on. */
  readonly expect: (selector: string) => void
  /** Milliseconds from the start of the navigation until it was painted. */
  readonly painted: () => Promise<number>
}

let painted: Promise<number> | null = null

const page: ColdPage = {
  expect: selector => {
    painted = whenPainted(() => document.querySelector(selector) !== null)
  },
  painted: () => painted ?? Promise.reject(new Error('nothing is expected')),
}

Object.assign(window, { bench: page })
