import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Registry } from 'prom-client'
import { StartFault } from '../start-fault.ts'

/** Nobody but this machine: neither phones nor watchers can reach it, with or without a proxy. */
const host = '127.0.0.1'

export interface GaugeServer {
  readonly port: number
  close(): void
}

/** Serves the gauges at /metrics on a port of their own. */
export async function serveGauges(registry: Registry, port: number): Promise<GaugeServer> {
  const http = createServer((request, response) => {
    if (request.method !== 'GET' || request.url !== '/metrics') return void response.writeHead(404).end()
    registry.metrics().then(
      text => void response.writeHead(200, { 'content-type': registry.contentType }).end(text),
      () => void response.writeHead(500).end(),
    )
  })
  await listen(http, port)
  return {
    port: (http.address() as AddressInfo).port,
    close() {
      http.close()
      http.closeAllConnections()
    },
  }
}

function listen(http: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    http.once('error', (error: NodeJS.ErrnoException) =>
      reject(
        new StartFault(`METRICS_PORT ${port} cannot be used (${error.code}); set it to another or leave it unset.`),
      ),
    )
    http.listen(port, host, resolve)
  })
}
