"""Tables of version 1: the kept plan.

A plan is a record of what was worked out; it may name a piece that has gone since, so nothing
in it has to exist elsewhere.
"""

from __future__ import annotations

PLAN_TABLES = """
CREATE TABLE "plan" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "made" INTEGER NOT NULL,
  "start" INTEGER NOT NULL,
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "plan_coats" (
  "owner" INTEGER NOT NULL REFERENCES "plan" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "number" INTEGER NOT NULL,
  "piece" TEXT NOT NULL,
  "coat" TEXT NOT NULL,
  "start" INTEGER NOT NULL,
  "end" INTEGER NOT NULL,
  "spot" TEXT NOT NULL,
  "joint" TEXT NOT NULL,
  "mix" INTEGER NOT NULL,
  "person" TEXT NOT NULL,
  "window_opens" INTEGER,
  "window_closes" INTEGER,
  "window_trust" TEXT,
  "air" TEXT NOT NULL,
  "poured" INTEGER NOT NULL CHECK ("poured" IN (0, 1)),
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "plan_steps" (
  "owner" INTEGER NOT NULL REFERENCES "plan" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "kind" TEXT NOT NULL,
  "piece" TEXT NOT NULL,
  "start" INTEGER NOT NULL,
  "end" INTEGER NOT NULL,
  "person" TEXT NOT NULL,
  "coat" TEXT,
  "opens" INTEGER,
  "closes" INTEGER,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "plan_ready" (
  "owner" INTEGER NOT NULL REFERENCES "plan" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "piece" TEXT NOT NULL,
  "stage" TEXT NOT NULL,
  "likely" INTEGER,
  "safe" INTEGER,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "plan_outcomes" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "plan" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "order" TEXT NOT NULL,
  "due" INTEGER NOT NULL,
  "leaves" INTEGER,
  "reason" TEXT NOT NULL,
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "plan_outcomes_changes" (
  "owner" INTEGER NOT NULL REFERENCES "plan_outcomes" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "words" TEXT NOT NULL,
  "leaves" INTEGER,
  "keeps_promise" INTEGER NOT NULL CHECK ("keeps_promise" IN (0, 1)),
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "plan_unplanned" (
  "owner" INTEGER NOT NULL REFERENCES "plan" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "piece" TEXT NOT NULL,
  "coat" TEXT,
  "reason" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;
"""
