-- A security deposit is taxed when it is used or forfeited, a part payment when it comes: the entry says which it is.
ALTER TABLE "payment" ADD COLUMN "held_as" TEXT NOT NULL DEFAULT '';

ALTER TABLE payment DISABLE TRIGGER append_only;
UPDATE payment SET held_as = 'security' WHERE kind = 'deposit';
ALTER TABLE payment ENABLE TRIGGER append_only;

ALTER TABLE payment ADD CONSTRAINT a_deposit_says_how_it_is_held
  CHECK ((kind = 'deposit' AND held_as IN ('security', 'part')) OR (kind <> 'deposit' AND held_as = ''));
