import * as z from 'zod/mini'

const probeSchema = z.object({ outsideUrl: z.nullable(z.string()) })

const askLimitMs = 2_000

/** Names that mean this machine alone: a link to them opens nothing on another phone. */
const isHereAlone = (hostname: string): boolean => hostname === 'localhost' || /^(127\.|\[?::1)/.test(hostname)

/** The address of this page as another phone reaches it; the page's own where the server does not say. */
export async function pageAddress(get: typeof fetch, { origin, hostname, pathname }: Location): Promise<string> {
  const outside = isHereAlone(hostname) ? await outsideUrlOf(get, origin) : null
  return `${outside ?? origin}${pathname}`
}

async function outsideUrlOf(get: typeof fetch, origin: string): Promise<string | null> {
  try {
    const answer = await get(`${origin}/api/probe`, { signal: AbortSignal.timeout(askLimitMs), cache: 'no-store' })
    const parsed = probeSchema.safeParse(await answer.json())
    return parsed.success ? (parsed.data.outsideUrl?.replace(/\/$/, '') ?? null) : null
  } catch {
    // No server now: the link is good all the same once this address is.
    return null
  }
}
