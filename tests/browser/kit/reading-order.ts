import type { Page } from '@playwright/test'

/**
 * Where a line of the page does not stand in its order from left to right: a text written from right to left counts as
 * one letter, so whatever it displaces is found. Only what stands in one block is compared.
 */
export const outOfOrder = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const fromRight = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/
    const isInline = (element: Element) => getComputedStyle(element).display === 'inline'
    const blockOf = (node: Node): Element | null => {
      let element = node.parentElement
      while (element && isInline(element)) element = element.parentElement
      return element
    }
    interface Item {
      readonly text: string
      left: number
      readonly top: number
      readonly height: number
      readonly isFromRight: boolean
    }
    // Boxes of two lines may overlap, their middles are apart.
    const isOnLine = (a: Pick<Item, 'top' | 'height'>, b: Pick<Item, 'top' | 'height'>) =>
      Math.abs(a.top + a.height / 2 - b.top - b.height / 2) < a.height / 2
    const lines = new Map<Element, Item[]>()
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const block = blockOf(node)
      if (!block || block.closest('textarea, option, svg, .hidden')) continue
      const items = lines.get(block) ?? []
      lines.set(block, items)
      const text = node.textContent ?? ''
      let isBroken = true
      for (let at = 0; at < text.length; at++) {
        const letter = text[at] ?? ''
        const isFromRight = fromRight.test(letter)
        if (!isFromRight && !/[A-Za-z0-9]/.test(letter)) {
          // A space does not part a name, nor does the sign between two who play one ball.
          if (letter !== ' ' && letter !== '&') isBroken = true
          continue
        }
        const range = document.createRange()
        range.setStart(node, at)
        range.setEnd(node, at + 1)
        const [box] = range.getClientRects()
        if (!box || box.width === 0) continue
        const last = items.at(-1)
        if (last && isOnLine(last, box) && isFromRight && last.isFromRight && !isBroken)
          last.left = Math.min(last.left, box.left)
        else items.push({ text: letter, left: box.left, top: box.top, height: box.height, isFromRight })
        isBroken = false
      }
    }
    const wrong: string[] = []
    for (const [block, items] of lines) {
      for (const [place, item] of items.entries()) {
        const next = items[place + 1]
        if (next && isOnLine(item, next) && next.left < item.left - 0.5) {
          wrong.push(block.textContent ?? '')
          break
        }
      }
    }
    return wrong
  })
