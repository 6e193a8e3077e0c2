/**
 * When the frame that shows a change has gone through the main thread, in milliseconds of the page's clock: what is
 * waited for comes true, the next frame begins, and the first task after that frame runs. By then the page would answer
 * a finger too. The browser's own event timing rounds to 8 ms and ends with the first frame, which for a score that is
 * stored before it is shown is too early.
 */
export const whenPainted = (isShown: () => boolean): Promise<number> =>
  new Promise(resolve => {
    const look = (): void => {
      if (!isShown()) return
      changes.disconnect()
      requestAnimationFrame(() => afterFrame(resolve))
    }
    const changes = new MutationObserver(look)
    changes.observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['aria-pressed'] })
    look()
  })

function afterFrame(tell: (at: number) => void): void {
  const { port1, port2 } = new MessageChannel()
  port1.onmessage = () => {
    port1.close()
    tell(performance.now())
  }
  port2.postMessage(null)
}
