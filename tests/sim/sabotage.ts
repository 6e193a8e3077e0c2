/**
 * A fault planted in the product, to see that the run finds it: the era stays the same through a restore, the content of
 * an op whose identity is taken is not compared, an op is answered before it is durable, what waits to be sent is not
 * kept. What the fold does is spoilt from outside, where the run is loaded.
 */
export type Sabotage = 'none' | 'era' | 'content hash' | 'durable' | 'outbox'
