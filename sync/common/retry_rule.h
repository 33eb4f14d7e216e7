// What to do after an error, by its code: written once, for phone and desk alike.
#pragma once

#include <absl/status/status.h>
#include <absl/time/time.h>

#include "core/records/random.h"

namespace newel {

enum class RetryRule {
  SameCall,   // the same call again, after a back-off: kUnavailable, kDeadlineExceeded, kResourceExhausted,
              // kCancelled
  FromRead,   // read again what it was based on, then decide: kAborted, kAlreadyExists
  Never,      // it can never succeed as it is: kInvalidArgument, kNotFound, kOutOfRange, kUnimplemented,
              // kDataLoss, kInternal, kUnknown
  AskPerson,  // somebody has to do something first: kUnauthenticated, kPermissionDenied, kFailedPrecondition
};

// `status` is an error; OK counts as Never.
RetryRule retryRule(const absl::Status& status);

// How long to wait after `failures` (from 1) failures in a row: a random time between half and the whole of
// base x 2^(failures-1), at most `most`. So many phones that lost the hub at once do not return at once.
absl::Duration backOff(int failures, absl::Duration base, absl::Duration most, Random& random);

}  // namespace newel
