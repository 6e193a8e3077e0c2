import { writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import type { Browser } from '@playwright/test'
import type { Shot } from './camera.ts'
import type { Look } from './looks.ts'
import { nameOfLook } from './looks.ts'

/** A sheet is small enough to be seen whole, px. */
const sheet = { width: 1240, height: 1000, gap: 14, label: 44 }

/** Text on a sheet stays large enough to be read, and as many columns as can be stand side by side. */
const scaleOf = ({ width, text }: Look): number => {
  const usual = { 320: 0.72, 390: 0.75, 768: 0.76, 1280: 0.46 }[width]
  return text === 100 ? usual : { 320: 0.48, 390: 0.45, 768: 0.4, 1280: 0.305 }[width]
}

/** A part of a shot that fits into one column; a long page goes on in the next. */
interface Column {
  readonly shot: Shot
  readonly from: number
}

/** Lays the shots of one look out on sheets and writes them as PNG files; their names. */
export async function printSheets(browser: Browser, folder: string, look: Look, shots: readonly Shot[]): Promise<void> {
  const scale = scaleOf(look)
  const room = Math.floor((sheet.height - sheet.label - sheet.gap) / scale)
  const columns = shots.flatMap(shot =>
    Array.from({ length: Math.ceil(shot.height / room) }, (_, place): Column => ({ shot, from: place * room })),
  )
  const across = Math.floor((sheet.width - sheet.gap) / (look.width * scale + sheet.gap))
  const page = await browser.newPage({ viewport: { width: sheet.width, height: sheet.height } })
  for (let start = 0; start < columns.length; start += across) {
    const name = `${nameOfLook(look)}-${String(start / across + 1).padStart(2, '0')}`
    const file = join(folder, 'sheet.html')
    const drawn = columns.slice(start, start + across).map(column => drawColumn(column, { folder, scale, room }))
    writeFileSync(file, `<!doctype html><meta charset="utf-8"><style>${style}</style><body>${drawn.join('')}`)
    await page.goto(`file://${file}`)
    // Short pages make a short sheet.
    const { height = sheet.height } = (await page.locator('body').boundingBox()) ?? {}
    await page.screenshot({ path: join(folder, `${name}.png`), clip: { x: 0, y: 0, width: sheet.width, height } })
  }
  await page.close()
}

const style = `
  body { margin: 0; padding: ${sheet.gap}px; display: flex; gap: ${sheet.gap}px; align-items: start; background: #cfcabd;
    font: 14px/1.2 sans-serif; }
  figure { margin: 0; position: relative; }
  figcaption { height: ${sheet.label - sheet.gap}px; overflow: hidden; }
  div { background-repeat: no-repeat; }
  hr { position: absolute; left: -10px; width: 8px; margin: 0; border: 0; border-top: 3px solid #a00; }`

interface Paper {
  readonly folder: string
  readonly scale: number
  /** Of a shot in one column, px of the page. */
  readonly room: number
}

function drawColumn({ shot, from }: Column, { folder, scale, room }: Paper): string {
  const { look, name, file, height, fold, findings } = shot
  const px = (value: number): string => `${Math.round(value * scale)}px`
  const label = from === 0 ? name : `… ${name}`
  const warning = findings.find(line => line.startsWith('scrolls'))
  const isFolded = fold !== null && fold > from && fold <= from + room && fold < height
  return `<figure style="width:${px(look.width)}">
    <figcaption><b>${label}</b>${warning ? `<br>${warning}` : ''}</figcaption>
    <div style="height:${px(Math.min(room, height - from))};background-image:url(${relative(folder, file)});
      background-size:${px(look.width)} ${px(height)};background-position:0 -${px(from)}"></div>
    ${isFolded ? `<hr style="top:calc(${sheet.label - sheet.gap}px + ${px(fold - from)})">` : ''}
  </figure>`
}
