import { createConnection } from '../sync/idb-connection.ts'

/** Where the outings of this phone lie. Opened while the page still begins, so that it need not be waited for. */
export const outingsDatabase = createConnection('six-threes')
outingsDatabase.open()
