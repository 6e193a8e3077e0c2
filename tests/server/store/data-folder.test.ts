import { describe, expect, it } from 'vitest'
import { isNetworkFileSystem } from '#server/store/data-folder.ts'

// Source of the numbers: statfs(2), Linux man-pages.
describe('the file system of the data folder', () => {
  it.each([
    ['NFS', 0x6969],
    ['SMB', 0x517b],
    ['SMB2', 0xfe534d42],
    ['CIFS', 0xff534d42],
    ['FUSE', 0x65735546],
    ['9P', 0x01021997],
  ])('%s is one on which a database can break', (_, type) => {
    expect(isNetworkFileSystem(type)).toBe(true)
    // As a signed number, which some machines give.
    expect(isNetworkFileSystem(type | 0)).toBe(true)
  })

  it.each([
    ['ext4', 0xef53],
    ['XFS', 0x58465342],
    ['Btrfs', 0x9123683e],
    ['tmpfs', 0x01021994],
    ['overlay', 0x794c7630],
  ])('%s is a local one', (_, type) => expect(isNetworkFileSystem(type)).toBe(false))
})
