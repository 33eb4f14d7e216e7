// Mistakes that the simulation (tests/sim) has to find: each switch makes the program wrong in one known way,
// so that a check which would let it pass is seen to be no check. In every build that people run the answer
// is false at compile time and the wrong branch is not there; only the simulation's own copy of these
// sources, compiled with NEWEL_BROKEN_VARIANTS, can be told to be wrong.
#pragma once

namespace newel {

enum class Broken {
  Nothing,
  AcknowledgeBeforeCommit,   // the hub says "kept" although its store could not
  DropDedupe,                // the hub takes what it knows for new
  ServeRevoked,              // the hub forgets to ask whether access was ended
  FeedEverybody,             // the hub sends everybody's records to each phone
  MissTheRestore,            // the hub begins no new generation after a restore
  NumbersIgnorePhones,       // the hub gives numbers that a phone has already
  LeaveTheClash,             // and does not sign again what can therefore not arrive
  CompareDeviceClocks,       // the phone believes its own date over the clinic's
  AcceptOlderNumber,         // the programme that came last counts
  CursorBeforeRecords,       // the phone notes that it has what it has not kept yet
  HoldWaitsForDisk,          // a hold order that cannot be written is not told
  ForgetOutboxOnRevocation,  // what is queued goes with the access
  ClearWholePage,            // "later" counts as "kept"
  AcknowledgeById,           // an acknowledgement of one revision is taken for all
  OfferNothingAgain,         // the phone does not offer again what a restored hub lost
  OfferFirstRevision,        // it offers the first revision again, not the last
  KeepFormerPerson,          // pairing for somebody else leaves the former one's records
  ForgetCorrections,         // a later revision is kept and never queued
  IgnoreBackupPin,           // the phone does not look for the certificate it was told of
  UseMediaUnchecked,         // a photo is shown before its hash is checked
  NoFlush,                   // a commit is not on the disk when it returns
  TrustTheLog,               // what a failed flush left readable is taken for written
};

#ifdef NEWEL_BROKEN_VARIANTS
bool isBroken(Broken which);
#else
[[maybe_unused]] static constexpr bool isBroken(Broken /*which*/) { return false; }
#endif

}  // namespace newel
