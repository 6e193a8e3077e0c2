/**
 * A phone says after three seconds that an answer is overdue, and gives the link up after eight; the rest is for a machine
 * that is busy.
 */
export const overdueMs = 6_000

/** Where nothing is asked, the server's sign of life is missed after twenty seconds. */
export const missedMs = 23_000
