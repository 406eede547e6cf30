/** The vehicle a document is about, as plain data; what is unknown is left out. */
export interface DocumentVehicle {
  readonly description: string;
  readonly plate?: string;
  readonly vin?: string;
  readonly odometerKm?: number;
  readonly fuel?: string;
}

export interface DocumentCustomer {
  readonly name: string;
  readonly address?: readonly string[];
  readonly email?: string;
  readonly phone?: string;
}
