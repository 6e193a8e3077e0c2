import { randomBytes } from 'node:crypto'

/** A name that no log has had: phones that know another compare what they hold. */
export const newEra = (): string => randomBytes(12).toString('hex')
