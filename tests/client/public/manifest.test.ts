import { readFileSync } from 'node:fs'
import { PNG } from 'pngjs'
import { describe, expect, test } from 'vitest'

const read = (file: string): Buffer => readFileSync(new URL(`../../../client/public/${file}`, import.meta.url))
const manifest = JSON.parse(read('manifest.webmanifest').toString()) as {
  readonly icons: readonly { readonly src: string; readonly sizes: string; readonly purpose: string }[]
}
const drawn = manifest.icons.filter(({ src }) => src.endsWith('.png'))

describe('the icons of the installed app', () => {
  test('are there in the sizes that a browser asks for before it installs, for any shape and cut to a mask', () => {
    for (const purpose of ['any', 'maskable']) {
      const sizes = drawn.filter(icon => icon.purpose === purpose).map(icon => icon.sizes)
      expect(sizes).toEqual(['192x192', '512x512'])
    }
  })

  test.each(drawn)('$src for $purpose is as large as the manifest says', ({ src, sizes }) => {
    const { width, height } = PNG.sync.read(read(src.slice(1)))
    expect(`${width}x${height}`).toBe(sizes)
  })

  // Web Application Manifest, W3C: the safe zone of a maskable icon is a circle of two fifths of its width.
  test('lose nothing outside the circle that every mask leaves', () => {
    const { width, data } = PNG.sync.read(read('icon-512.png'))
    const ground = data.subarray(0, 3)
    const outside: string[] = []
    for (let at = 0; at < data.length; at += 4) {
      const [x, y] = [(at / 4) % width, Math.floor(at / 4 / width)]
      const isSafe = Math.hypot(x - width / 2, y - width / 2) <= width * 0.4
      if (!isSafe && !data.subarray(at, at + 3).equals(ground)) outside.push(`${x},${y}`)
    }
    expect(outside).toEqual([])
  })
})
