-- How many keys went back with the vehicle; null for hand-overs recorded before keys were counted.
ALTER TABLE "hand_over" ADD COLUMN "keys" INTEGER;
