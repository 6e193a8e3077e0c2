import type jsqr from 'jsqr'

/** Loaded when a code is first read: nobody else pays for it. */
let loaded: Promise<typeof jsqr> | null = null

function loadDecoder(): Promise<typeof jsqr> {
  loaded ??= import('jsqr').then(module => module.default)
  return loaded
}

/** Wide enough to read, small enough to be quick on an old phone. */
const widestPx = 1_600

/** A code whose squares fall badly on the picture's own may be read at another size. */
const sizes = [1, 2, 1.5, 0.5]

/** The code in a picture, looked for at so many sizes. */
async function readCode(source: CanvasImageSource, width: number, height: number, tries: number) {
  const decode = await loadDecoder()
  const whole = Math.min(1, widestPx / Math.max(width, height, 1))
  for (const size of sizes.slice(0, tries)) {
    const picture = pixelsOf(source, width, height, whole * size)
    const code = picture && decode(picture.data, picture.width, picture.height, { inversionAttempts: 'dontInvert' })
    if (code) return code.data
  }
  return null
}

function pixelsOf(source: CanvasImageSource, width: number, height: number, scale: number): ImageData | null {
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(width * scale))
  canvas.height = Math.max(1, Math.round(height * scale))
  const context = canvas.getContext('2d', { willReadFrequently: true })
  if (context === null) return null
  context.drawImage(source, 0, 0, canvas.width, canvas.height)
  return context.getImageData(0, 0, canvas.width, canvas.height)
}

/** The code in a picture; null when there is none or it is no picture. */
export async function readCodeOfPicture(file: Blob): Promise<string | null> {
  const picture = await createImageBitmap(file).catch(() => null)
  if (picture === null) return null
  const code = await readCode(picture, picture.width, picture.height, sizes.length)
  picture.close()
  return code
}

export interface Camera {
  readonly stop: () => void
}

/**
 * Runs the camera into a video element and tells every code that it reads. Null where there is no camera, the person
 * says no, or the page is on plain http, where browsers give none.
 */
export async function watchCodes(video: HTMLVideoElement, read: (code: string) => void): Promise<Camera | null> {
  if (!navigator.mediaDevices) return null
  const wanted = { video: { facingMode: 'environment' }, audio: false } as const
  const stream = await navigator.mediaDevices.getUserMedia(wanted).catch(() => null)
  if (stream === null) return null
  let isWatching = true
  video.srcObject = stream
  await video.play().catch(() => null)
  const look = async (): Promise<void> => {
    if (!isWatching) return
    const code = await readCode(video, video.videoWidth, video.videoHeight, 1).catch(() => null)
    if (code !== null && isWatching) read(code)
    if (isWatching) requestAnimationFrame(() => void look())
  }
  void look()
  return {
    stop: () => {
      isWatching = false
      for (const track of stream.getTracks()) track.stop()
      video.srcObject = null
    },
  }
}

export const hasCamera = (): boolean => Boolean(navigator.mediaDevices) && window.isSecureContext
