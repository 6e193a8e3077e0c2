/** One of the codes that together carry a text. */
export interface Frame {
  /** What all frames of one text share: the start of its hash. */
  readonly set: string
  /** From 1. */
  readonly place: number
  readonly of: number
  readonly data: string
}

/** Small enough for a code that one phone reads off another's screen. */
const dataInFrame = 400
const mostFrames = 999
const setLength = 12
const form = /^six-threes:([0-9a-f]{12}):(\d{1,3}):(\d{1,3}):([A-Za-z0-9_-]+)$/

export type HashOf = (text: string) => string

/** Splits base64url into frames; `hash` gives hex. */
export function framesOf(data: string, hash: HashOf): string[] {
  const set = hash(data).slice(0, setLength)
  const of = Math.max(1, Math.ceil(data.length / dataInFrame))
  if (of > mostFrames) throw new Error(`${of} frames are too many to show`)
  return Array.from({ length: of }, (_, place) => {
    const part = data.slice(place * dataInFrame, (place + 1) * dataInFrame)
    return `six-threes:${set}:${place + 1}:${of}:${part}`
  })
}

/** Reads a code; null when it is none of ours. */
export function parseFrame(text: string): Frame | null {
  const [, set, place, of, data] = form.exec(text) ?? []
  if (set === undefined || data === undefined) return null
  const frame = { set, place: Number(place), of: Number(of), data }
  return frame.place >= 1 && frame.place <= frame.of ? frame : null
}
