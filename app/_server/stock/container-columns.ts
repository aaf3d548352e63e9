import { Prisma } from '@/prisma/generated/client';

/** What a flat read of containers reads of each container, its place and its lot, by the letters of the tables below. */
export const CONTAINER_COLUMNS = Prisma.sql`
  c."stockId", c."lotId", c."productId", c."size", c."tareMg", c."openedLifeCount", c."openedLifeUnit", c."receivedOn",
  s."label", s."quantity", s."condition", s."hold", s."opened", s."placeId",
  pl."name" AS "place", pl."label" AS "placeLabel", up."name" AS "placeParent",
  l."code" AS "lotCode", ls."hold" AS "lotHold", l."madeOn", l."madePrecision", l."madeConfirmed", l."bestBefore",
  l."bestPrecision", l."bestConfirmed", l."useBy", l."usePrecision", l."useConfirmed"`;

/** A container with its lot, its product and where it stands. */
export const CONTAINER_TABLES = Prisma.sql`"Container" c
  JOIN "Stock" s ON s."id" = c."stockId"
  JOIN "Lot" l ON l."stockId" = c."lotId"
  JOIN "Stock" ls ON ls."id" = c."lotId"
  JOIN "Product" p ON p."id" = c."productId"
  LEFT JOIN "Place" pl ON pl."id" = s."placeId"
  LEFT JOIN "Place" up ON up."id" = pl."parentId"`;
