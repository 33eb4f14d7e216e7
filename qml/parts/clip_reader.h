// Turns the bytes of a clip into pictures and sound, at their time. UI thread.
#pragma once

#include <QtCore/QByteArray>
#include <QtGui/QImage>
#include <functional>
#include <memory>

namespace newel::parts {

class ClipReader {
 public:
  virtual ~ClipReader() = default;
  // From the beginning; what was read before is let go of. `bytes` outlive it until stop(). `picture` for
  // each picture; `over` at the end, with whether this device could not read it. Neither may stop() from
  // within.
  virtual void start(const QByteArray& bytes, std::function<void(const QImage&)> picture,
                     std::function<void(bool failed)> over) = 0;
  virtual void stop() = 0;
};

// Called once, for the first clip. Empty, or with nothing made: this program plays no clips.
using ClipReaderMaker = std::function<std::unique_ptr<ClipReader>()>;

// By the system's media libraries (Qt Multimedia); in the library newel_clip_reader.
std::unique_ptr<ClipReader> makeQtClipReader();

}  // namespace newel::parts
