import type { Locator } from '@playwright/test'
import jsqr from 'jsqr'
import { PNG } from 'pngjs'

type Decode = typeof jsqr

/** Published as CommonJS: the function is the module itself in one loader and its `default` in another. */
const decode: Decode = (jsqr as Decode & { readonly default?: Decode }).default ?? jsqr

/** What a phone's camera reads in the picture on the screen. */
export async function readQr(picture: Locator): Promise<string> {
  // A page behind others may paint nothing to photograph.
  await picture.page().bringToFront()
  // Clear of the bar that stays at the bottom of the page.
  await picture.evaluate(element => element.scrollIntoView({ block: 'center' }))
  const png = PNG.sync.read(await picture.screenshot())
  const code = decode(Uint8ClampedArray.from(png.data), png.width, png.height)
  if (code === null) throw new Error('no QR code can be read in the picture')
  return code.data
}
