/** A colour's linear red, green and blue, 0 to 1. */
type Light = readonly [red: number, green: number, blue: number]

/** Source: IEC 61966-2-1 (sRGB), as WCAG 2.2, W3C 2023, takes it over in its definition of relative luminance. */
function lightOf(hex: string): Light {
  const part = (at: number): number => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
  }
  return [part(1), part(3), part(5)]
}

const luminanceRow = [0.2126, 0.7152, 0.0722] as const

const product = (row: readonly number[], light: Light): number =>
  row.reduce((sum, weight, at) => sum + weight * (light[at] ?? 0), 0)

/** Source: WCAG 2.2, W3C 2023, definition of contrast ratio. */
function contrastOf(one: Light, other: Light): number {
  const [light = 0, dark = 0] = [product(luminanceRow, one), product(luminanceRow, other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

/** The contrast of two colours, to one. */
export const contrast = (one: string, other: string): number => contrastOf(lightOf(one), lightOf(other))

/**
 * How colours look to eyes that lack one kind of cone, in linear light. Source: G. M. Machado, M. M. Oliveira and
 * L. A. F. Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Transactions on
 * Visualization and Computer Graphics 15(6), 2009, pages 1291 to 1298: matrices of severity 1.0. To eyes that see no
 * colour at all a colour is its luminance (sRGB, as above).
 */
export const deficiencies = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
  achromatopsia: [luminanceRow, luminanceRow, luminanceRow],
} as const

export type Deficiency = keyof typeof deficiencies

function seenWith(deficiency: Deficiency, hex: string): Light {
  const light = lightOf(hex)
  const part = (row: readonly number[]): number => Math.min(1, Math.max(0, product(row, light)))
  const [red, green, blue] = deficiencies[deficiency]
  return [part(red), part(green), part(blue)]
}

/** The contrast of two colours to such eyes, to one. */
export const contrastWith = (deficiency: Deficiency, one: string, other: string): number =>
  contrastOf(seenWith(deficiency, one), seenWith(deficiency, other))
