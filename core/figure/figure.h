// The drawn body of one exercise for one person: give it a moment, get a picture and the words for it.
// Set up once, drawn at every frame; after the first frames of each scene drawing allocates nothing.
// Not thread-safe: one Figure a thread. Not here: painting (drawing.h says how), the clips' form
// (core/records/clip.proto).
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <string>
#include <vector>

#include "core/figure/clip_book.h"
#include "core/figure/drawing.h"
#include "core/figure/motion.h"
#include "core/figure/palette.h"
#include "core/library/catalogue.h"
#include "core/records/clip.pb.h"
#include "core/records/person.pb.h"
#include "core/records/timeline.pb.h"

namespace newel {

// Who is drawn.
struct FigureBody {
  LimbState left;
  LimbState right;
  v1::Side weaker = v1::SIDE_LEFT;  // the prosthetic side; with both lost, the other of the stronger one
  v1::Appearance appearance;

  const LimbState& limb(v1::Side side) const { return side == v1::SIDE_LEFT ? left : right; }
};
// From a person's record. `use`: ON draws every prosthesis the person has; OFF draws none.
FigureBody bodyOf(const v1::Person& person, v1::ProsthesisUse use, const v1::Appearance& appearance);

struct FigureOptions {
  v1::Support support = v1::SUPPORT_UNSPECIFIED;  // UNSPECIFIED: the exercise's first
  bool dark = false;
  bool letters = true;
  // In the person's language, one or two characters each.
  std::string left_letter = "L";
  std::string right_letter = "R";
};

// `options` with the sides lettered as `language` letters them.
FigureOptions lettered(FigureOptions options, const std::string& language,
                       const ClipBook& clips = ClipBook::builtIn());

class Figure {
 public:
  // kNotFound when the exercise or its clip does not exist.
  static absl::StatusOr<Figure> make(const std::string& exercise_id, const FigureBody& body,
                                     const FigureOptions& options = {},
                                     const Catalogue& catalogue = Catalogue::builtIn(),
                                     const ClipBook& clips = ClipBook::builtIn());
  Figure(Figure&&) noexcept;
  Figure& operator=(Figure&&) noexcept;
  ~Figure();

  // ---- which moment ----
  // At `ms` of active time of a timeline of this exercise; clipped to its ends.
  Moment momentAt(const v1::Timeline& timeline, std::int64_t ms) const;
  // `fraction` (0 to 1) of one whole run through all phases, each as long as its kind usually is. `working`:
  // the side that works where sides alternate; UNSPECIFIED: the weaker.
  Moment momentOfRun(double fraction, v1::Side working = v1::SIDE_UNSPECIFIED) const;
  // `fraction` of one phase. kNotFound when there is no such phase.
  absl::StatusOr<Moment> momentOfPhase(const std::string& phase_id, double fraction,
                                       v1::Side working = v1::SIDE_UNSPECIFIED) const;
  // The moments worth a still picture, in order, at most `most` (from 2): the start, each movement half-way,
  // each hold; where that is too many, the ways back go first. For handouts, contact sheets and reduced
  // motion.
  std::vector<Moment> keyMoments(int most, v1::Side working = v1::SIDE_UNSPECIFIED) const;

  // ---- the picture ----
  // Width over height of every picture.
  double aspect() const;
  // Valid until the next call. All pictures of a figure share one size of frame, so nothing jumps.
  const Drawing& draw(const Moment& moment);

  // ---- the words ----
  // What the picture shows, for someone who does not see it: side, start, movement, support. `language` falls
  // back to English where words are missing.
  std::string describe(const Moment& moment, const std::string& language) const;

  // ---- for the audit and for tests ----
  const Choreography& choreography(v1::Side side_a) const;
  const v1::Clip& clip() const;
  const v1::Exercise& exercise() const;
  const FigureBody& body() const;

 private:
  struct Parts;
  explicit Figure(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> m_parts;
};

}  // namespace newel
