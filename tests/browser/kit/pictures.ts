import type { Locator, Page } from '@playwright/test'
import { PNG } from 'pngjs'
import type { Deficiency } from '#tests/kit/colour-vision.ts'

/** Luminance of every pixel, 0 to 1, row by row. */
export interface Picture {
  readonly width: number
  readonly height: number
  readonly light: Float32Array
}

/** Draws the page as such eyes see it, until it is closed. */
export async function seeWith(page: Page, deficiency: Deficiency): Promise<void> {
  const session = await page.context().newCDPSession(page)
  await session.send('Emulation.setEmulatedVisionDeficiency', { type: deficiency })
}

export async function pictureOf(what: Locator): Promise<Picture> {
  return readPicture(await what.screenshot({ animations: 'disabled', caret: 'hide' }))
}

/** The greatest distance between red, green and blue in a pixel of it, 0 to 255; 0 where nothing has a hue. */
export async function hueOf(what: Locator): Promise<number> {
  const { data } = PNG.sync.read(await what.screenshot({ animations: 'disabled' }))
  let widest = 0
  for (let at = 0; at < data.length; at += 4) {
    const pixel = data.subarray(at, at + 3)
    widest = Math.max(widest, Math.max(...pixel) - Math.min(...pixel))
  }
  return widest
}

interface Part {
  /** Of the element's width, 0 to 1. */
  readonly from: number
  readonly width: number
}

/** A part of an element, as wide as said and as high as it is. */
export async function pictureOfPart(what: Locator, { from, width }: Part): Promise<Picture> {
  return cut(await pictureOf(what), from, width)
}

function cut({ width, height, light }: Picture, from: number, share: number): Picture {
  const [left, wide] = [Math.round(width * from), Math.floor(width * share)]
  const part = new Float32Array(wide * height)
  for (let row = 0; row < height; row++)
    part.set(light.subarray(row * width + left, row * width + left + wide), row * wide)
  return { width: wide, height, light: part }
}

const linear = (value: number): number =>
  value <= 0.04045 * 255 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4

function readPicture(bytes: Buffer): Picture {
  const { width, height, data } = PNG.sync.read(bytes)
  const light = new Float32Array(width * height)
  for (let at = 0; at < light.length; at++) {
    const [red = 0, green = 0, blue = 0] = data.subarray(at * 4, at * 4 + 3)
    light[at] = 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue)
  }
  return { width, height, light }
}

/** The least contrast that a mark needs to be told from what is beside it. Source: WCAG 2.2, W3C 2023, 1.4.11. */
const toldApart = 3

/**
 * The pixels that are told apart when one picture is laid on the other, of the larger one's pixels, 0 to 1. Hue counts for
 * nothing: two states in two colours of one luminance are the same picture.
 */
export function differingShare(one: Picture, other: Picture): number {
  const [width, height] = [Math.max(one.width, other.width), Math.max(one.height, other.height)]
  const [a, b] = [groundOf(one), groundOf(other)]
  let differing = 0
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const [light, dark] = [lightAt(one, row, column, a), lightAt(other, row, column, b)].sort((x, y) => y - x)
      if (((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05) >= toldApart) differing += 1
    }
  }
  return differing / (width * height)
}

const lightAt = ({ width, height, light }: Picture, row: number, column: number, ground: number): number =>
  row < height && column < width ? (light[row * width + column] ?? ground) : ground

/** The light of most of its pixels. */
function groundOf({ light }: Picture): number {
  const counts = new Map<number, number>()
  for (const each of light) counts.set(each, (counts.get(each) ?? 0) + 1)
  const [most] = [...counts].sort(([, a], [, b]) => b - a)
  return most?.[0] ?? 1
}

/** Names of two that are not told apart by this share of their pixels, "one = other"; empty when all are. */
export function alike(pictures: ReadonlyMap<string, Picture>, share: number): readonly string[] {
  const all = [...pictures]
  return all.flatMap(([name, one], place) =>
    all
      .slice(place + 1)
      .filter(([, other]) => differingShare(one, other) < share)
      .map(([other]) => `${name} = ${other}`),
  )
}
