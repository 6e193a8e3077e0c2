/** What the phone's own way of sharing is given. */
export interface Shared {
  readonly title: string
  readonly text?: string
  readonly url?: string
}

/** True where the phone has a way of its own to send something on: the share sheet (W3C Web Share API). */
export const canShare = (shared: Shared): boolean =>
  typeof navigator.share === 'function' && (navigator.canShare?.(shared) ?? true)

/** Opens the share sheet; false where it cannot be opened. Somebody who changes their mind is no fault. */
export const share = (shared: Shared): Promise<boolean> =>
  navigator.share(shared).then(
    () => true,
    (reason: unknown) => reason instanceof DOMException && reason.name === 'AbortError',
  )

/** False where the page gets no clipboard, as on plain http. */
export async function copyText(text: string): Promise<boolean> {
  if (!navigator.clipboard) return false
  return navigator.clipboard.writeText(text).then(
    () => true,
    () => false,
  )
}
