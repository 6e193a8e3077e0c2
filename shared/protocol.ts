/**
 * The version of the wire contract. One line a bump, newest first; the golden JSON Schemas change with it.
 * - 2 (2026-11): formats of the whole table; concessions, agreed results, rulings, absences, certification, playing
 *   conditions. Added since: three words that open a request to be let in (words, askers, admit, asked; by HTTP ask,
 *   wait), the desk's offers by asking, a game over some of the holes (gameHoles), a Course Handicap without
 *   rating minus par (gameCourseHandicap), and the kinds of facts of a player's own log, which a server now holds for the player's phones.
 *   Who tees off in foursomes (teeShot), a ruling on a handicap too low on a card (net-off), skins left after the
 *   last hole (gameSkinsLeft), and what a short team has
 *   (gameShortTeam, gameDrawnCard), and extra holes as the end of a
 *   tie (gameTies). Deleting a log from the server (delete).
 *   The sketch of a hole (green, shape). A player's round under the Rules (rulesRound),
 *   Handicap Index and ratings (handicapIndex, ratings).
 * - 1 (2026-11): ops as canonical text, feeds, eras, four verdicts, snapshot in columns.
 */
export const protocolVersion = 2

/** The oldest version a server still talks to. The server is deployed first; never raised in silence. */
export const oldestProtocolVersion = 1
