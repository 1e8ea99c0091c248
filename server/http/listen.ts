import type { Server } from "node:http";
import type { AddressInfo } from "node:net";

/** Listens on a loopback address and gives the port; rejects with the error of the socket (`EADDRINUSE` for a taken port). */
export function listen(server: Server, port: number, address: string): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, address, () => {
      server.off("error", reject);
      resolve((server.address() as AddressInfo).port);
    });
  });
}

/** The address of a server for a browser of this machine. */
export const printUrl = (address: string, port: number): string =>
  `http://${address.includes(":") ? `[${address}]` : address}:${port}/`;
