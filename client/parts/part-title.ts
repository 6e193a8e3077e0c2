import type { PartLine } from '#core/formats/parts-result.ts'
import { say } from '../words/say-any.ts'

/** "Front nine", "Press 2", "Three 4" */
export const partTitle = ({ name, number }: PartLine): string => say(`part-${name}`, { n: number })
