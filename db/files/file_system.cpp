#include "db/files/file_system.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>
#include <sstream>
#include <vector>

namespace headcap::db {
namespace {

// Also what a desktop mounts when a share is opened in its file manager, and the folders a host
// shows its guests: the other side's locks are not seen there, nor is its shared memory.
constexpr auto kNetworkTypes = std::to_array<std::string_view>({"nfs",
                                                                "nfs4",
                                                                "cifs",
                                                                "smb3",
                                                                "smbfs",
                                                                "ncpfs",
                                                                "afs",
                                                                "ceph",
                                                                "glusterfs",
                                                                "gfs2",
                                                                "ocfs2",
                                                                "lustre",

                                                                "vboxsf",
                                                                "vmhgfs",
                                                                "fuse.sshfs",
                                                                "fuse.rclone",
                                                                "fuse.s3fs",
                                                                "fuse.glusterfs",
                                                                "fuse.davfs",
                                                                "fuse.ceph",
                                                                "fuse.smbnetfs",
                                                                "fuse.curlftpfs",
                                                                "fuse.gvfsd-fuse",
                                                                "fuse.kio-fuse",
                                                                "fuse.vmhgfs-fuse"});

std::vector<std::string> wordsOf(const std::string& line) {
    std::istringstream in(line);
    return {std::istream_iterator<std::string>(in), std::istream_iterator<std::string>()};
}

// mountinfo writes spaces, tabs, line ends and backslashes as \ooo.
std::string unescaped(const std::string& text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '\\' && i + 3 < text.size()) {
            out += static_cast<char>((text[i + 1] - '0') * 64 + (text[i + 2] - '0') * 8 +
                                     (text[i + 3] - '0'));
            i += 3;
        } else {
            out += text[i];
        }
    }
    return out;
}

bool holds(const std::string& mount, std::string_view path) {
    return path.starts_with(mount) &&
           (mount == "/" || path.size() == mount.size() || path[mount.size()] == '/');
}

} // namespace

std::string fileSystemIn(std::string_view mountinfo, std::string_view path) {
    std::istringstream lines{std::string{mountinfo}};
    std::string line;
    std::string type;
    std::size_t longest = 0;
    while (std::getline(lines, line)) {
        const auto words = wordsOf(line);
        const auto dash = std::find(words.begin(), words.end(), "-");
        if (words.size() < 5 || words.end() - dash < 2) {
            continue;
        }
        const std::string mount = unescaped(words[4]);
        // The last mount on a place covers those before it.
        if (holds(mount, path) && mount.size() >= longest) {
            longest = mount.size();
            type = *(dash + 1);
        }
    }
    return type;
}

std::string fileSystemOf(const std::filesystem::path& path) {
    std::ifstream in("/proc/self/mountinfo");
    const std::string text{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    std::error_code error;
    const auto whole = std::filesystem::weakly_canonical(path, error);
    return fileSystemIn(text, error ? path.string() : whole.string());
}

bool isNetworkFileSystem(std::string_view type) {
    return std::find(kNetworkTypes.begin(), kNetworkTypes.end(), type) != kNetworkTypes.end();
}

} // namespace headcap::db
