-- What the engineering needs to know of an item: a blower's displacement and drive, a pump's delivery, a tyre's size.
ALTER TABLE "item" ADD COLUMN "figures" JSONB NOT NULL DEFAULT '{}';
