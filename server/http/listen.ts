import type { Server } from "node:http";
import type { AddressInfo } from "node:net";

/** Listens on 127.0.0.1 and gives the port; rejects with the error of the socket (`EADDRINUSE` for a taken port). */
export function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", reject);
      resolve((server.address() as AddressInfo).port);
    });
  });
}
