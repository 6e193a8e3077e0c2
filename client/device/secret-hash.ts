import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'

/** SHA-256 in hex of a secret's text; a library, for `crypto.subtle` is missing on plain http. */
export const hashOfSecret = (secret: string): string => bytesToHex(sha256(utf8ToBytes(secret)))
