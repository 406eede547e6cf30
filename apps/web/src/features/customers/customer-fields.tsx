import { TextField } from "@/design/text-field";

interface CustomerFieldsProps {
  readonly customer?: {
    readonly name: string;
    readonly phone: string;
    readonly email: string;
    readonly address: string;
    readonly taxNumber: string;
    readonly notes: string;
  };
  /** Where the page is for nothing else. */
  readonly autoFocus?: boolean;
}

/** What is asked of a customer. */
export function CustomerFields({ customer, autoFocus = false }: CustomerFieldsProps) {
  return (
    <>
      <TextField
        name="name"
        label="Name"
        defaultValue={customer?.name ?? ""}
        autoComplete="off"
        isRequired
        autoFocus={autoFocus}
      />
      <div className="form-row">
        <TextField
          name="phone"
          label="Telephone"
          type="tel"
          defaultValue={customer?.phone ?? ""}
          autoComplete="off"
          help="Telephone or e-mail, at least one."
        />
        <TextField
          name="email"
          label="E-mail"
          type="email"
          defaultValue={customer?.email ?? ""}
          autoComplete="off"
        />
      </div>
      <TextField name="address" label="Address" defaultValue={customer?.address ?? ""} autoComplete="off" />
      <TextField
        name="taxNumber"
        label="Number for tax"
        defaultValue={customer?.taxNumber ?? ""}
        autoComplete="off"
        help="ABN of a business; leave it empty for a private customer."
      />
      <TextField name="notes" label="Notes" lines={3} defaultValue={customer?.notes ?? ""} />
    </>
  );
}
