"""Tables of version 4: how a studio reminds, and what became of each reminder."""

from __future__ import annotations

REMINDER_TABLES = """
CREATE TABLE "reminding" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "quiet_from" TEXT NOT NULL,
  "quiet_to" TEXT NOT NULL,
  "evening" TEXT NOT NULL,
  "readings_hours" REAL NOT NULL,
  "moved_minutes" INTEGER NOT NULL,
  "stays_in_tray" INTEGER NOT NULL CHECK ("stays_in_tray" IN (0, 1)),
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "reminding_leads" (
  "owner" INTEGER NOT NULL REFERENCES "reminding" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL,
  "value" INTEGER NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "reminding_off" (
  "owner" INTEGER NOT NULL REFERENCES "reminding" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "value" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "reminding_means_off" (
  "owner" INTEGER NOT NULL REFERENCES "reminding" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "value" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "reminders" (
  "uid" TEXT PRIMARY KEY,
  "kind" TEXT NOT NULL,
  "urgency" TEXT NOT NULL,
  "due" INTEGER NOT NULL,
  "meant" INTEGER NOT NULL,
  "moment" INTEGER NOT NULL,
  "saved_until" INTEGER,
  "together" TEXT NOT NULL,
  "piece" TEXT NOT NULL,
  "coat" TEXT NOT NULL,
  "order" TEXT NOT NULL,
  "place" TEXT NOT NULL,
  "strong" INTEGER NOT NULL CHECK ("strong" IN (0, 1)),
  "rings_at" INTEGER,
  "round" INTEGER NOT NULL,
  "rung" INTEGER NOT NULL,
  "rang_for" INTEGER,
  "came_due" INTEGER,
  "late" INTEGER NOT NULL CHECK ("late" IN (0, 1)),
  "acknowledged" INTEGER,
  "withdrawn" INTEGER
) STRICT, WITHOUT ROWID;

CREATE INDEX "reminders_to_ring" ON "reminders" ("rings_at") WHERE "rings_at" IS NOT NULL;

CREATE TABLE "rings" (
  "uid" TEXT NOT NULL REFERENCES "reminders" ("uid") ON DELETE CASCADE,
  "round" INTEGER NOT NULL,
  "means" TEXT NOT NULL,
  "notice" TEXT NOT NULL,
  "caller" TEXT NOT NULL,
  "calls" INTEGER NOT NULL,
  "started" INTEGER NOT NULL,
  "finished" INTEGER,
  "failure" TEXT,
  PRIMARY KEY ("uid", "round", "means")
) STRICT, WITHOUT ROWID;

CREATE TABLE "ringing" (
  "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
  "holder" TEXT NOT NULL,
  "taken" REAL NOT NULL,
  "until" REAL NOT NULL,
  "made_of" INTEGER NOT NULL,
  "made" INTEGER NOT NULL
) STRICT;

CREATE TABLE "calendar_events" (
  "uid" TEXT PRIMARY KEY,
  "sequence" INTEGER NOT NULL,
  "fingerprint" TEXT NOT NULL,
  "cancelled" INTEGER NOT NULL CHECK ("cancelled" IN (0, 1)),
  "changed" INTEGER NOT NULL,
  "starts" INTEGER NOT NULL,
  "ends" INTEGER NOT NULL,
  "words" TEXT NOT NULL
) STRICT, WITHOUT ROWID
"""
