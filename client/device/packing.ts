/** Bytes as base64url without padding. */
function toBase64Url(bytes: Uint8Array): string {
  let binary = ''
  for (const byte of bytes) binary += String.fromCharCode(byte)
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

const fromBase64Url = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), letter => letter.charCodeAt(0))

/** Deflated UTF-8 as base64url: ops say the same words again and again, so little is left. */
export async function packText(text: string): Promise<string> {
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'))
  return toBase64Url(new Uint8Array(await new Response(packed).arrayBuffer()))
}

/** Characters; a small code can swell to no more. */
const longestText = 20_000_000

/** The text again; null when it is no packed text or swells beyond reason. */
export async function unpackText(packed: string): Promise<string | null> {
  try {
    const stream = new Blob([fromBase64Url(packed)]).stream().pipeThrough(new DecompressionStream('deflate-raw'))
    return await readUpTo(stream.pipeThrough(new TextDecoderStream('utf-8', { fatal: true })), longestText)
  } catch {
    return null
  }
}

async function readUpTo(stream: ReadableStream<string>, most: number): Promise<string | null> {
  const reader = stream.getReader()
  let text = ''
  for (;;) {
    const { done, value } = await reader.read()
    if (done) return text
    text += value
    if (text.length > most) {
      await reader.cancel()
      return null
    }
  }
}
