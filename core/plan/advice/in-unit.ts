import { type LengthUnit, yardsPerUnit } from '#core/values/length.ts'

/** A number in the player's unit as yards, which the engine reckons in. */
export const toYards = (amount: number, unit: LengthUnit): number => amount * yardsPerUnit(unit)

/** Yards as a whole number in the player's unit. */
export const wholeIn = (yd: number, unit: LengthUnit): number => Math.floor(yd / yardsPerUnit(unit) + 0.5)
